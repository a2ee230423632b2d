// Values entered in the camera, one after another, and values that were put in by hand.
import { byHandKey, entryKey } from '../../../../src/logbook/keys.ts';
import type { Seat } from '../../../e2e/seat.ts';
import { written } from '../../../e2e/sweeping.ts';
import { under, type Kept } from '../kept.ts';
import type { Fact } from '../ledger.ts';
import { fill, shows, tap } from '../shows.ts';
import type { Life, Work } from '../work.ts';
import { toSituation, toStart } from './ways.ts';

export const entering: Work = {
  name: 'entering',
  desk: 'logbook',
  lasts: 3000,
  presses: 3,
  acknowledges: 3,
  async go(life, seat) {
    await toStart(life, seat);
    await toSituation(seat);
    await tap(seat, 'Entering');
    if (life.random() < 0.5) await byHand(life, seat);
    const more = new Map<number, number>();
    for (let turn = 0; ; turn += 1) {
      const value = ((7 * life.number + turn) % 41) - 20;
      await fill(seat, 'Value in the camera', String(value));
      life.pressed();
      await tap(seat, 'Save as entered');
      await shows(seat, { text: `Noted: ${written(value)} is in the camera.` });
      more.set(value, (more.get(value) ?? 0) + 1);
      life.acknowledged(atLeast(`${written(value)} entered`, entered(value), life, more.get(value) ?? 0));
    }
  },
};

async function byHand(life: Life, seat: Seat): Promise<void> {
  const value = (life.number % 41) - 20;
  await tap(seat, 'Put a value in by hand');
  await tap(seat, 'Only the value the camera has now');
  await fill(seat, 'Value now', String(value));
  life.pressed();
  await tap(seat, 'Save the value');
  await shows(seat, { text: 'Saved in the logbook.' });
  life.acknowledged(atLeast(`${written(value)} put in by hand`, putIn(value), life, 1));
}

const entered = (value: number) => (kept: Kept) => under<{ value: number }>(kept, entryKey('')).filter((one) => one.value === value).length;
const putIn = (value: number) => (kept: Kept) =>
  under<{ finding: { chosen: number } }>(kept, byHandKey('')).filter(({ finding }) => finding.chosen === value).length;

/** So many more than there were when this life began. */
const atLeast = (what: string, count: (kept: Kept) => number, { before }: Life, more: number): Fact => {
  const wanted = count(before) + more;
  return { what: `${what} ${wanted} times`, of: 'logbook', isIn: (kept) => count(kept) >= wanted };
};
