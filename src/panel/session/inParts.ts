// A large logbook goes to disk in parts, so that the panel stays awake and says how far it is. While it does, the store bears a
// mark: with it a start knows that the writing was broken off, and puts back what was there before. A small one goes in one write.
import { KEY } from '../../logbook/keys.ts';
import type { Stored } from '../../logbook/stored.ts';
import type { HowFar } from '../../stepwise.ts';
import type { Moment } from '../../units.ts';
import type { Keeper } from './keeper.ts';

/** Keys that go to disk in one write: at most a second's work on a slow computer. */
const AT_ONCE = 1000;
const PART = 200;

/** `copied`: when the copy of what was there before was taken. */
export async function keepInParts(keeper: Keeper, changes: Stored, copied: Moment, tell: (far: HowFar) => void = () => undefined): Promise<void> {
  const entries = Object.entries(changes);
  if (entries.length <= AT_ONCE) return keeper.keep(changes);
  await keeper.keep({ [KEY.bringing]: copied });
  let written = 0;
  let part = PART;
  while (written < entries.length) {
    tell({ done: written, of: entries.length });
    const next = entries.slice(written, written + part);
    await keeper.keep(Object.fromEntries(next));
    written += next.length;
    // What found no room waits in the keeper, which tries it again with all the rest.
    if (next.some(([key]) => keeper.waitsFor(key))) part = entries.length;
  }
  await keeper.keep({ [KEY.bringing]: undefined });
}
