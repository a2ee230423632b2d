// Reminding of a backup: when the newest one is old and something was measured or entered since.
import { moment, type Moment } from '../../units.ts';
import type { Library } from '../library.ts';

/** Days after which a backup is old (common practice, no source). */
const OLD = 30;
const DAY = 86_400_000;

/** The sentence of the reminder, or null when none is due. `made`: when the newest backup was written. */
export function backupReminder(library: Library, made: Moment | null, now: Moment): string | null {
  const since = made ?? moment(0);
  const unsaved = [
    ...library.records.map(({ finished }) => finished),
    ...[...library.byHand, ...library.entries].map(({ at }) => at),
  ].filter((at) => at > since).length;
  if (unsaved === 0) return null;
  if (made === null) return `There is no backup yet of ${counted(unsaved)}: write one to a file now.`;
  const days = Math.floor((now - made) / DAY);
  return days < OLD
    ? null
    : `The newest backup is ${days} days old and lacks ${counted(unsaved)}: write a new one now.`;
}

const counted = (count: number): string => (count === 1 ? 'one record' : `${count} records`);
