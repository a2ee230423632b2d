// What photographs showed, as fields of a table. The correction that was checked has a field of its own: it is not a value that anyone
// measured, so that a table that is brought in never takes it for one. The centre of a bracket stands where every centre does.
import type { Moment } from '../../units.ts';
import type { ProofRecord } from '../proofRecord.ts';

export const PHOTOGRAPHED = ['one picture', 'check of a value', 'bracket of corrections'] as const;
export type Photographed = (typeof PHOTOGRAPHED)[number];

export const SHOWED = ['sharp', 'not sharp', 'not sure', 'confirmed', 'in front', 'behind', 'not enough', 'agree', 'differ'] as const;

/** Lengths in millimetres at the target, positive behind it; `from` and `to` bound the 95 % interval. */
export interface PhotographFields {
  readonly taken: Moment | null;
  readonly shots: number | null;
  readonly checked: number | null;
  readonly focusError: number | null;
  readonly focusErrorFrom: number | null;
  readonly focusErrorTo: number | null;
  /** Standard deviation of one shot. */
  readonly scatter: number | null;
  readonly nearLessFar: number | null;
  /** What one step is worth. */
  readonly stepWorth: number | null;
  readonly stepWorthFrom: number | null;
  readonly stepWorthTo: number | null;
  readonly showed: (typeof SHOWED)[number] | null;
}

export const NOT_PHOTOGRAPHED: PhotographFields = {
  taken: null,
  shots: null,
  checked: null,
  focusError: null,
  focusErrorFrom: null,
  focusErrorTo: null,
  scatter: null,
  nearLessFar: null,
  stepWorth: null,
  stepWorthFrom: null,
  stepWorthTo: null,
  showed: null,
};

interface Centre {
  readonly centre: number | null;
  readonly from: number | null;
  readonly to: number | null;
}

const NO_CENTRE: Centre = { centre: null, from: null, to: null };

export function photographFields({ proof }: ProofRecord): PhotographFields & Centre & { readonly kind: Photographed } {
  const { taken } = proof;
  switch (proof.is) {
    case 'one':
      return { ...NOT_PHOTOGRAPHED, ...NO_CENTRE, kind: 'one picture', taken, shots: 1, ...errorOf(proof.error), showed: proof.sharp };
    case 'check': {
      const { shots, correction, bias, repeatability, nearLessFar, verdict } = proof;
      const showed = verdict.is === 'shifted' ? verdict.lies : verdict.is;
      const found = { ...errorOf(bias), scatter: repeatability, nearLessFar: nearLessFar?.value ?? null, showed };
      return { ...NOT_PHOTOGRAPHED, ...NO_CENTRE, kind: 'check of a value', taken, shots, checked: correction, ...found };
    }
    case 'bracket': {
      const { shots, step, centre, scatter, joined } = proof;
      const worth = { stepWorth: step.value, stepWorthFrom: step.low, stepWorthTo: step.high };
      const lies = { centre: centre.value, from: centre.low, to: centre.high };
      return { ...NOT_PHOTOGRAPHED, ...worth, ...lies, kind: 'bracket of corrections', taken, shots: shots.length, scatter, showed: joined?.is ?? null };
    }
  }
}

const errorOf = ({ value, low, high }: { readonly value: number; readonly low: number; readonly high: number }) => ({
  focusError: value,
  focusErrorFrom: low,
  focusErrorTo: high,
});
