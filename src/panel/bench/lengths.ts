// Lengths around the target, which run from hairs to metres.
import { writeDistance, type DistanceUnit } from '../../optics/length.ts';
import { writeNumber } from '../../optics/quantity.ts';
import type { Millimetres } from '../../units.ts';

/** Millimetres below a metre. */
export function nearTarget(length: Millimetres | 'infinite', unit: DistanceUnit): string {
  if (length === 'infinite') return 'no end';
  return length >= 1000 ? writeDistance(length, unit) : `${writeNumber(length, length < 10 ? 2 : length < 100 ? 1 : 0)} mm`;
}
