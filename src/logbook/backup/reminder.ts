// Reminding of a backup: when the newest one is old and something was measured or entered since.
import { moment, type Moment } from '../../units.ts';
import type { Library } from '../library.ts';

/** Days after which a backup is old (common practice, no source). */
const OLD = 30;
const DAY = 86_400_000;

/** `unsaved`: records that no backup holds. */
export type BackupReminder = { readonly is: 'none yet'; readonly unsaved: number } | { readonly is: 'old'; readonly days: number; readonly unsaved: number };

/** Null when no backup is due. `made`: when the newest one was written. */
export function backupReminder(library: Library, made: Moment | null, now: Moment): BackupReminder | null {
  const since = made ?? moment(0);
  const unsaved = [
    ...library.records.map(({ finished }) => finished),
    ...[...library.byHand, ...library.entries, ...library.proofs].map(({ at }) => at),
  ].filter((at) => at > since).length;
  if (unsaved === 0) return null;
  if (made === null) return { is: 'none yet', unsaved };
  const days = Math.floor((now - made) / DAY);
  return days < OLD ? null : { is: 'old', days, unsaved };
}
