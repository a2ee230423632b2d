// The last things before the finish is offered: the value that would be entered is held once, if it never was in a band that lay
// like this one, which also finds a gap there; and where a hidden shift of the focus could still harm, one early value is held again. More than quick
// care asks for both.
import type { Belief } from '../belief/belief.ts';
import type { Care } from '../care.ts';
import type { Readiness } from '../end/care.ts';
import type { Drift } from '../end/drift.ts';
import type { Ends } from '../end/ends.ts';
import { nearestMiddle } from '../end/outcome.ts';
import { stillnessOf } from '../end/stillness.ts';
import type { Hold } from '../hold.ts';
import type { Steps } from '../../units.ts';
import type { Suggestion } from './suggestion.ts';

interface Asked {
  readonly belief: Belief;
  readonly holds: readonly Hold[];
  readonly readiness: Readiness;
  readonly care: Care;
  readonly skipped: readonly Steps[];
  /** Moments at or before this hold are out of the question. */
  readonly trustedUpTo: number;
}

/** Odds at which the sweep asks for a look in live view; below them one more hold can still tell. */
const VERY_STRONG = 10;

/** `hidden`: strong evidence of a shift that harms. `test`: the hold still wanted to be sure of none. */
export interface Closing {
  readonly hidden: Drift | null;
  readonly test: Suggestion | null;
}

export function closingOf({ belief, holds, readiness, care, skipped, trustedUpTo }: Asked): Closing {
  if (care === 'quick' || !readiness.ready || readiness.as !== 'band' || !readiness.ends) return { hidden: null, test: null };
  const { low, high } = readiness.ends;
  const { chosen } = nearestMiddle(belief, (low.last + high.last) / 2);
  const proven = holds.some(({ value }) => value === chosen) || provenBefore(belief, readiness.ends, chosen);
  const proof = proven || skipped.includes(chosen) ? null : chosen;
  const { odds, afterHold, test } = stillnessOf(belief, holds, trustedUpTo, (low.last + high.last) / 2);
  const hidden = odds > VERY_STRONG ? { bayesFactor: odds, afterHold } : null;
  if (proof !== null) return { hidden, test: { value: proof, reason: { because: 'proof' } } };
  if (test === null || skipped.includes(test)) return { hidden, test: null };
  return { hidden, test: { value: test, reason: { because: 'unmoved' } } };
}

/** When the lens was last swept the ends were the same, and this value held. */
const provenBefore = ({ remembered }: Belief, { low, high }: Ends, chosen: Steps): boolean =>
  remembered?.proven === chosen && remembered.low === low.last && remembered.high === high.last;
