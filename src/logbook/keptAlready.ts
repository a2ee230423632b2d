// Whether what photographs showed is in the logbook already: the same figures of one situation are kept once, however often the pictures are
// brought in. What a bracket says beside a band is left aside: that changes with the next sweep, the pictures do not.
import type { Proof } from '../photographs/proof.ts';
import { canonical } from './canonical.ts';
import type { ProofRecord } from './proofRecord.ts';

/** The record of the very same figures; null where there is none. `situation`: its id. */
export function keptAlready(proofs: readonly ProofRecord[], situation: string, proof: Proof): ProofRecord | null {
  const figures = figuresOf(proof);
  return proofs.find((record) => record.subject.situation === situation && figuresOf(record.proof) === figures) ?? null;
}

const figuresOf = (proof: Proof): string => canonical(proof.is === 'bracket' ? { ...proof, joined: null } : proof);
