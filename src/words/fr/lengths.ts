// French: lengths around the target, which run from hairs to metres, and where they are measured from.
import type { MeasuredFrom } from '../../optics/measuredFrom.ts';
import { inUnit, type DistanceUnit } from '../../optics/writtenLength.ts';
import type { Millimetres } from '../../units.ts';
import { write } from './write.ts';

/** Centimetres matter below ten, not above a hundred. */
const digits = (value: number): number => (value < 10 ? 2 : value < 100 ? 1 : 0);

/** "4,25 m", "13,9 pi". */
export const distance = (length: Millimetres, unit: DistanceUnit): string => write.distance(length, unit);

/** The same as it is said: a voice does not read the sign of the foot. */
export function distanceAloud(length: Millimetres, unit: DistanceUnit): string {
  const value = inUnit(length, unit);
  return `${write.number(value, digits(value))} ${unit === 'm' ? 'mètres' : 'pieds'}`;
}

/** Millimetres below a metre. Without end: of a depth, which is feminine. */
export function nearTarget(length: Millimetres | 'infinite', unit: DistanceUnit): string {
  if (length === 'infinite') return 'infinie';
  return length >= 1000 ? distance(length, unit) : write.unit(length, 'millimeter', digits(length));
}

/** After a length: "4,25 m du plan focal". */
export const FROM: Readonly<Record<MeasuredFrom, string>> = {
  'film plane': 'du plan focal',
  'front of lens': 'de l’avant de l’objectif',
};

export const inDegrees = (angle: number, decimals: number): string => `${write.number(angle, decimals)}\u00b0`;
