// The time a sweep took the person: from event to event, without the breaks. A sweep left in the evening and finished in
// the morning has not taken a night.
import { between, seconds, type Moment, type Seconds } from '../units.ts';

/** A silence longer than this is a break, and counts as none of the sweep's time (common practice, no source). */
const BREAK = 120;

/** Seconds spent between these moments, given in order, up to `now`. */
export function timeSpent(moments: readonly Moment[], now: Moment): Seconds {
  const gaps = moments.map((moment, index) => between(moment, moments[index + 1] ?? now));
  return seconds(gaps.reduce((total, gap) => total + (gap > BREAK ? 0 : gap), 0));
}
