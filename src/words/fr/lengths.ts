// French: lengths around the target, which run from hairs to metres, and where they are measured from.
import type { MeasuredFrom } from '../../optics/measuredFrom.ts';
import { inUnit, type DistanceUnit } from '../../optics/writtenLength.ts';
import type { Millimetres } from '../../units.ts';
import { lengthDigits } from '../writing.ts';
import { write } from './write.ts';

/** The same as it is said: a voice does not read the sign of the foot. */
export function distanceAloud(length: Millimetres, unit: DistanceUnit): string {
  const value = inUnit(length, unit);
  return `${write.number(value, lengthDigits(value))} ${unit === 'm' ? 'mètres' : 'pieds'}`;
}

/** Without end: of a depth, which is feminine. */
export const nearTarget = (length: Millimetres | 'infinite', unit: DistanceUnit): string => (length === 'infinite' ? 'infinie' : write.nearby(length, unit));

/** After a length: "4,25 m du plan focal". */
export const FROM: Readonly<Record<MeasuredFrom, string>> = {
  'film plane': 'du plan focal',
  'front of lens': 'de l’avant de l’objectif',
};
