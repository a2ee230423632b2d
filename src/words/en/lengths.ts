// English: lengths around the target, which run from hairs to metres, and where they are measured from.
import type { MeasuredFrom } from '../../optics/measuredFrom.ts';
import type { DistanceUnit } from '../../optics/writtenLength.ts';
import type { Millimetres } from '../../units.ts';
import { write } from './write.ts';

export const nearTarget = (length: Millimetres | 'infinite', unit: DistanceUnit): string => (length === 'infinite' ? 'no end' : write.nearby(length, unit));

/** After "from". */
export const FROM: Readonly<Record<MeasuredFrom, string>> = {
  'film plane': 'the film plane',
  'front of lens': 'the front of the lens',
};
