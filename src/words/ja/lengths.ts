// Japanese: lengths around the target, which run from hairs to metres, and where they are measured from.
import type { MeasuredFrom } from '../../optics/measuredFrom.ts';
import type { DistanceUnit } from '../../optics/writtenLength.ts';
import type { Millimetres } from '../../units.ts';
import { write } from './write.ts';

export const nearTarget = (length: Millimetres | 'infinite', unit: DistanceUnit): string => (length === 'infinite' ? '無限' : write.nearby(length, unit));

/** Before 「から」. */
export const FROM: Readonly<Record<MeasuredFrom, string>> = {
  'film plane': '撮像面',
  'front of lens': 'レンズ先端',
};
