// Where months begin between two moments: the ruler below a history. Where they would crowd, only years are marked.
import { isoOf, momentOf } from '../../calendar.ts';
import type { Moment } from '../../units.ts';

/** Pixels that two marks are apart at least. */
const APART = 5;
const MONTH = 30.44 * 86_400_000;

/** Beginnings of months after `first` and up to `last`, oldest first; `room`: pixels from the one to the other. */
export function monthsBetween(first: Moment, last: Moment, room: number): Moment[] {
  const [year = 0, month = 0] = isoOf(first, 'day').split('-').map(Number);
  const every = ((last - first) / MONTH) * APART <= room ? 1 : 12;
  const found: Moment[] = [];
  for (let next = every === 1 ? month : 12; ; next += every) {
    const at = momentOf({ year: year + Math.floor(next / 12), month: (next % 12) + 1, day: 1, hour: 0, minute: 0, second: 0 }, 0);
    if (at === null || at > last) return found;
    found.push(at);
  }
}
