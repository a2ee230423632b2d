// When the start reminds of a backup: only once there is enough to lose, and not again soon after it was put off. The logbook itself says
// it whenever a backup is old (`reminder.ts`).
import type { Moment } from '../../units.ts';
import type { HandRecord } from '../byHand.ts';
import type { LogRecord } from '../record.ts';

/** New records that are worth a file of their own, and days after which one is (common practice, no source). */
const MANY = 5;
const LONG = 30 * 86_400_000;

/**
 * How many records no backup holds, where the person is to be told; else null. `made`: when the newest backup was written. `putOff`: when
 * the person last said “not now”.
 */
export function earnedReminder({ records, byHand }: Measured, made: Moment | null, putOff: Moment | null, now: Moment): number | null {
  const all = [...records.filter(({ practice }) => !practice).map(({ finished }) => finished), ...byHand.map(({ at }) => at)];
  const unsaved = all.filter((at) => made === null || at > made);
  if (unsaved.length === 0) return null;
  const quietSince = Math.max(made ?? -Infinity, putOff ?? -Infinity);
  const fresh = unsaved.filter((at) => at > quietSince);
  const since = Number.isFinite(quietSince) ? quietSince : Math.min(...unsaved);
  return fresh.length >= MANY || now - since >= LONG ? unsaved.length : null;
}

interface Measured {
  readonly records: readonly LogRecord[];
  readonly byHand: readonly HandRecord[];
}
