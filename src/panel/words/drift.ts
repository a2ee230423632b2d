// The evidence that the focus moved, in words.
import type { Drift } from '../../sweep/end/drift.ts';

/** Odds beyond this say no more to a person. */
const MOST = 1000;

export function driftInWords({ bayesFactor, afterHold }: Drift): string {
  const odds = bayesFactor > MOST ? `more than ${MOST}` : `${Math.round(bayesFactor)}`;
  return `The holds after the first ${afterHold} tell of another band: ${odds} to 1 that the focus moved.`;
}
