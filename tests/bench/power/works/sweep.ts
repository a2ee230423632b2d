// A sweep of a band that never wavers, taken up where the power went, accepted or gone on with, and marked as entered.
import type { Journal } from '../../../../src/sweep/event.ts';
import { look, press, type Seat } from '../../../e2e/seat.ts';
import { steadyEye, type Word } from '../../../e2e/sweeping.ts';
import { shows, tap } from '../shows.ts';
import type { Life, Work } from '../work.ts';
import { finished, hold, liveIn, marked, swept } from './sweepFacts.ts';
import { atStart, settled, toSituation } from './ways.ts';

/** Narrow, so that most holds fail at once. */
const eye = steadyEye(3, 6);
const KEYS: Record<Word, string> = { solid: 's', delayed: 'd', flicker: 'f', nothing: 'n' };
const LIGHT: Record<Word, string> = { solid: 'steady', delayed: 'late', flicker: 'flicker', nothing: 'dark' };

interface Standing {
  readonly id: string;
  readonly told: string[];
}

export const sweep: Work = {
  name: 'sweep',
  desk: 'logbook',
  docked: true,
  lasts: 5000,
  presses: 3,
  acknowledges: 3,
  async go(life, seat) {
    let phase = await settled(seat);
    const live = liveIn(life.before);
    let standing: Standing | null = live && phase !== null ? { id: live.id, told: [...live.told] } : null;
    for (;;) {
      if (phase === 'finished' && standing) await leave(life, seat, standing);
      if (phase === 'finished' || !standing) standing = await begin(life, seat);
      phase = await onward(life, seat, standing);
    }
  },
};

async function begin(life: Life, seat: Seat): Promise<Standing> {
  await atStart(seat);
  await toSituation(seat);
  life.pressed();
  await tap(seat, life.random() < 0.5 ? 'Measure it again' : 'Quick re-check');
  await shows(seat, { phases: ['dialling'], prompted: true });
  const id = await seat.evaluate(async () => {
    const { live } = await ((globalThis as { browser?: typeof chrome }).browser ?? chrome).storage.local.get('live');
    const [first] = (live ?? []) as Journal;
    return first?.did === 'opened' ? first.id : 'none';
  });
  life.acknowledged(swept(id, []));
  return { id, told: [] };
}

/** One hold, or what is asked in its place; gives the phase when it is finished. */
async function onward(life: Life, seat: Seat, { id, told }: Standing): Promise<string | null> {
  const { phase, value, holds, announcement } = await look(seat);
  if (phase === 'checking') {
    await press(seat, 's');
    await shows(seat, { phases: ['dialling', 'offered'] });
    return null;
  }
  if (phase === 'offered' && life.random() < 0.6) {
    life.pressed();
    await press(seat, 'a');
    await shows(seat, { phases: ['finished'], saidAfter: announcement });
    life.acknowledged(finished(id));
    return 'finished';
  }
  if (phase === 'offered') {
    await press(seat, 'g');
    await shows(seat, { phases: ['dialling'] });
    return null;
  }
  if (phase !== 'dialling' || value === null) {
    await new Promise((go) => setTimeout(go, 50));
    return phase === 'finished' ? phase : null;
  }
  await press(seat, ' ');
  await shows(seat, { phases: ['holding'] });
  const word = await eye(value);
  if (word === 'solid') await shows(seat, { phases: ['judging'] });
  life.pressed();
  await press(seat, KEYS[word]);
  await shows(seat, { holdsOver: holds.length, prompted: true });
  told.push(hold(value, LIGHT[word]));
  life.acknowledged(swept(id, told.slice()));
  return null;
}

/** Marks the value as entered, and goes back to the start. */
async function leave(life: Life, seat: Seat, { id }: Standing): Promise<void> {
  const { text, found } = await look(seat);
  if (found !== null && !text.includes('is marked as entered')) {
    life.pressed();
    await press(seat, 'e');
    await shows(seat, { text: 'is marked as entered in the camera.' });
    life.acknowledged(marked(id));
  }
  await press(seat, 'n');
  await shows(seat, { screen: 'next' });
  await seat.click('[aria-label="Back"]');
}
