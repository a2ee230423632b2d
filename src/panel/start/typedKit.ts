// Lengths as they stand in the fields of the start screen, and what they mean.
import { usualDistance } from '../../kit/kit.ts';
import { millimetres, type Millimetres } from '../../units.ts';
import { metresTyped } from '../words/quantities.ts';
import { typedNumber } from '../words/typedNumber.ts';
import type { Draft, Picks } from './draft.ts';

/** The focal length as it stands in its field: what was typed, or the only one that the lens has. */
export function focalLengthText({ focalLength }: Draft, { lens }: Pick<Picks, 'lens'>): string {
  if (focalLength !== null) return focalLength;
  const focal = lens?.focal;
  return focal && focal.from === focal.to ? String(focal.from) : '';
}

/** The distance as it stands in its field: what was typed, or fifty focal lengths, those of lens and converter together. */
export function distanceText(draft: Draft, picks: Pick<Picks, 'lens' | 'converter'>): string {
  if (draft.distance !== null) return draft.distance;
  const length = typedNumber(focalLengthText(draft, picks));
  return length > 0 ? metresTyped(usualDistance(millimetres(length * (picks.converter?.factor ?? 1)))) : '';
}

export const inMillimetresTyped = (metres: string): Millimetres => millimetres(typedNumber(metres) * 1000);
