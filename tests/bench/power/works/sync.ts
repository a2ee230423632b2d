// Values of another computer that lie in the browser's sync when the panel opens: they are taken in, and told.
import { entryKey } from '../../../../src/logbook/keys.ts';
import { written } from '../../../e2e/sweeping.ts';
import { under } from '../kept.ts';
import { shows } from '../shows.ts';
import type { Life, Work } from '../work.ts';

const KEY = 'values/laptop/0';

export const sync: Work = {
  name: 'sync',
  desk: 'logbook',
  lasts: 2000,
  presses: 0,
  acknowledges: 1,
  async before(life, beside) {
    const value = valueOf(life);
    await beside.evaluate(
      async (key, list) => {
        await ((globalThis as { browser?: typeof chrome }).browser ?? chrome).storage.sync.set({ [key]: [list] });
      },
      KEY,
      [idOf(life), value, Date.now(), 'e', 'elsewhere', 'Velde M1', 'Orrin 85 f/1.8', 85, 4250],
    );
    life.ledger.hold({ what: 'values of another computer', of: 'beside', isIn: ({ synced }) => KEY in synced });
  },
  async go(life, seat) {
    await shows(seat, { text: `${written(valueOf(life))} in place of` });
    life.acknowledged({ what: `value ${idOf(life)} of another computer`, of: 'logbook', isIn: ({ local }) => entryKey(idOf(life)) in local });
  },
};

const idOf = ({ number }: Life): string => `far-${number}`;

/** Another value than any that was entered last. */
function valueOf({ before, number }: Life): number {
  const newest = under<{ at: number; value: number }>(before, entryKey('')).toSorted((a, b) => b.at - a.at)[0];
  const value = (number % 41) - 20;
  return newest?.value === value ? value - Math.sign(value || 1) : value;
}
