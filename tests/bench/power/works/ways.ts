// The ways through the panel that several works take.
import { look, press, type Seat } from '../../../e2e/seat.ts';
import { shows, tap } from '../shows.ts';
import type { Life } from '../work.ts';
import { finished, liveIn } from './sweepFacts.ts';

const DURING = ['dialling', 'holding', 'judging', 'offered', 'checking', 'paused', 'finished'];

/** The phase of the sweep that the panel goes on with; none at the start. */
export async function settled(seat: Seat): Promise<string | null> {
  await seat.evaluate(
    (phases, patience) =>
      new Promise<void>((done, failed) => {
        const isSo = (): boolean => {
          const main = document.querySelector('main');
          const { screen, phase } = main?.dataset ?? {};
          return phases.includes(phase ?? '') || (screen === 'start' && (main?.textContent ?? '').includes('Practice camera'));
        };
        const watch = new MutationObserver(() => isSo() && end());
        const timer = setTimeout(() => failed(new Error('The panel never settles.')), patience);
        const end = (): void => {
          clearTimeout(timer);
          watch.disconnect();
          done();
        };
        watch.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
        if (isSo()) end();
      }),
    DURING,
    20_000,
  );
  return seat.evaluate(() => document.querySelector('main')?.dataset['phase'] ?? null);
}

/** To the start, by way of the end of a sweep that is under way. */
export async function toStart(life: Life, seat: Seat): Promise<void> {
  const phase = await settled(seat);
  if (phase === null) return;
  const sweep = liveIn(life.before);
  if (phase === 'checking') await press(seat, 's');
  if (phase !== 'finished') {
    await shows(seat, { phases: ['dialling', 'offered', 'paused'] });
    if (sweep && sweep.told.length === 0) life.ledger.drop((what) => what === sweep.what);
    const { announcement } = await look(seat);
    life.pressed();
    await press(seat, phase === 'offered' ? 'a' : 'x');
    await shows(seat, { phases: ['finished'], saidAfter: announcement });
    if (sweep && sweep.told.length > 0) life.acknowledged(finished(sweep.id));
  }
  await press(seat, 'n');
  await shows(seat, { screen: 'next' });
  await seat.click('[aria-label="Back"]');
  await atStart(seat);
}

export const atStart = (seat: Seat): Promise<void> => shows(seat, { screen: 'start', text: 'Practice camera' });

/** From the start to the situation of the logbook. */
export async function toSituation(seat: Seat): Promise<void> {
  await tap(seat, 'Logbook', 'nav');
  await shows(seat, { screen: 'logbook', text: 'found' });
  await seat.click('.entries button');
  await shows(seat, { screen: 'situation', text: 'Check it with photographs' });
}

/** From the start to backups, tables and copies. */
export async function toFiles(seat: Seat): Promise<void> {
  await tap(seat, 'Logbook', 'nav');
  await tap(seat, 'Backup and tables');
  await shows(seat, { screen: 'files', text: 'Copies in this browser' });
}
