// German: lengths around the target, which run from hairs to metres, and where they are measured from.
import type { MeasuredFrom } from '../../optics/measuredFrom.ts';
import type { DistanceUnit } from '../../optics/writtenLength.ts';
import type { Millimetres } from '../../units.ts';
import { write } from './write.ts';

/** Centimetres matter below ten, not above a hundred. */
const digits = (value: number): number => (value < 10 ? 2 : value < 100 ? 1 : 0);

/** "4,25 m", "13,9 ft". */
export const distance = (length: Millimetres, unit: DistanceUnit): string => write.distance(length, unit);

/** Millimetres below a metre. */
export function nearTarget(length: Millimetres | 'infinite', unit: DistanceUnit): string {
  if (length === 'infinite') return 'unendlich';
  return length >= 1000 ? distance(length, unit) : write.unit(length, 'millimeter', digits(length));
}

/** After "ab". */
export const FROM: Readonly<Record<MeasuredFrom, string>> = {
  'film plane': 'der Sensorebene',
  'front of lens': 'der Vorderkante des Objektivs',
};

export const inDegrees = (angle: number, decimals: number): string => `${write.number(angle, decimals)}\u00b0`;
