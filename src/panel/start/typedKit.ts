// Lengths as they stand in the fields of the start screen, and what they mean.
import { usualDistance } from '../../kit/kit.ts';
import { millimetres, type Millimetres } from '../../units.ts';
import { metresTyped } from '../words/quantities.ts';
import { typedNumber } from '../words/typedNumber.ts';
import type { Draft } from './draft.ts';

/** The distance as it stands in its field: what was typed, or fifty focal lengths. */
export function distanceText({ distance, focalLength }: Draft): string {
  if (distance !== null) return distance;
  const length = typedNumber(focalLength);
  return length > 0 ? metresTyped(usualDistance(millimetres(length))) : '';
}

export const inMillimetresTyped = (metres: string): Millimetres => millimetres(typedNumber(metres) * 1000);
