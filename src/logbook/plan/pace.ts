// How long one sweep takes this person: the middle of their latest ones, because one long break or one lucky sweep says
// little. Without any, a guess that says it is one.
import { seconds, type Seconds } from '../../units.ts';

/** What a record says of it. */
interface Timed {
  readonly practice: boolean;
  readonly outcome: { readonly tally: { readonly seconds: Seconds } };
}

export interface SweepTime {
  readonly perSweep: Seconds;
  /** How many sweeps it rests on; 0 for a guess. */
  readonly sweeps: number;
}

const LATEST = 15;
/** About fourteen holds of fifteen seconds each (common practice, no source). */
const GUESS = seconds(210);

/** From the records, newest first. The practice camera is quicker to dial and tells nothing of it. */
export function paceOf(records: readonly Timed[]): SweepTime {
  const taken = records
    .filter(({ practice }) => !practice)
    .slice(0, LATEST)
    .map(({ outcome }) => outcome.tally.seconds);
  const sorted = taken.toSorted((a, b) => a - b);
  const middle = (sorted.length - 1) / 2;
  const [low, high] = [sorted[Math.floor(middle)], sorted[Math.ceil(middle)]];
  return low === undefined || high === undefined ? { perSweep: GUESS, sweeps: 0 } : { perSweep: seconds((low + high) / 2), sweeps: sorted.length };
}
