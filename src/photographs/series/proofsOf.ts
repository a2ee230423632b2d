// What is kept of one picture or of a series, from what was read: figures alone, and only those that are finite.
import type { Moment, Steps } from '../../units.ts';
import type { FocusReading } from '../focusReading.ts';
import type { Proof } from '../proof.ts';
import type { WithInterval } from '../withInterval.ts';
import type { BracketSeries, BracketTold } from './bracketSeries.ts';
import type { CheckSeries } from './checkSeries.ts';
import { errorOf, type SeriesPicture } from './seriesPicture.ts';

/** When the first of them was taken; null where no camera wrote it. */
export function firstTaken(pictures: readonly Pick<SeriesPicture, 'camera'>[]): Moment | null {
  const times = pictures.flatMap(({ camera }) => camera?.taken ?? []);
  return times.toSorted((a, b) => a - b)[0] ?? null;
}

export const proofOfOne = (focus: FocusReading, taken: Moment | null): Proof => ({
  is: 'one',
  taken,
  error: errorOf(focus),
  depth: sidesOf(focus.depth),
  sharp: focus.is,
});

/** Null where there are too few shots for an interval: that says nothing worth keeping. */
export function proofOfCheck({ check, shots, reference, depth }: CheckSeries, correction: Steps, taken: Moment | null): Proof | null {
  const { bias, repeatability, nearLessFar, verdict } = check;
  if (![bias, ...(nearLessFar === null ? [] : [nearLessFar])].every(isFinite)) return null;
  return { is: 'check', taken, correction, shots, reference: reference !== null, bias, repeatability, nearLessFar, depth: sidesOf(depth), verdict };
}

export function proofOfBracket({ shots, reference }: BracketSeries, { measure, band, joined }: BracketTold, taken: Moment | null): Proof {
  const { step, centre, scatter, atZero } = measure;
  return {
    is: 'bracket',
    taken,
    shots: shots.map(({ correction, error }) => ({ correction, error })),
    reference,
    step,
    centre,
    scatter,
    atZero,
    joined: joined === null || band === null ? null : { ...joined, band },
  };
}

const isFinite = ({ value, low, high }: WithInterval): boolean => [value, low, high].every(Number.isFinite);
const sidesOf = ({ front, behind }: FocusReading['depth']): { front: number; behind: number | 'infinite' } => ({ front, behind });
