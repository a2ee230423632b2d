// The newest check with photographs that could tell whether a value is right, as the value to enter and the card for the bag say it.
import type { WithInterval } from '../photographs/withInterval.ts';
import type { Moment, Steps } from '../units.ts';
import type { ProofRecord } from './proofRecord.ts';

export interface CheckFound {
  readonly correction: Steps;
  /** Millimetres at the target, positive behind it. */
  readonly bias: WithInterval;
  readonly found: 'confirmed' | 'shifted';
  /** When the pictures were taken, or else kept. */
  readonly at: Moment;
}

/** `proofs` of one situation, oldest first. `of`: the value it is to be of; null for any. Null where none of them could tell. */
export function newestCheck(proofs: readonly ProofRecord[], of: Steps | null): CheckFound | null {
  const found = proofs.flatMap(({ proof, at }) =>
    proof.is !== 'check' || proof.verdict.is === 'not enough' || (of !== null && proof.correction !== of)
      ? []
      : [{ correction: proof.correction, bias: proof.bias, found: proof.verdict.is, at: proof.taken ?? at }],
  );
  return found.at(-1) ?? null;
}
