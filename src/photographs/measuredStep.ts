// What one step of correction is worth at the target, as brackets measured it: better than the estimate of the bench, because makers publish little.
import type { Proof } from './proof.ts';
import type { WithInterval } from './withInterval.ts';

/** `proofs` of one situation, oldest first; the newest bracket counts. Null where there is none, or where a step may be worth nothing. */
export function measuredStep(proofs: readonly Proof[]): WithInterval | null {
  const bracket = proofs.findLast((proof) => proof.is === 'bracket');
  return bracket === undefined || bracket.step.low <= 0 ? null : bracket.step;
}
