// Focal lengths and distances that a viewfinder autofocus body can meet. What lies outside is a slip of the unit.
import * as v from 'valibot';
import type { FieldFault } from './fault.ts';
import { millimetres, type Millimetres } from '../units.ts';

const length = (least: number, most: number, otherwise: FieldFault) =>
  v.pipe(v.number(otherwise), v.minValue(least, otherwise), v.maxValue(most, otherwise), v.brand('Millimetres'));

export const FocalLength = length(4, 2000, 'no focal length');
export const Distance = length(50, 500_000, 'no distance');

/** The general-purpose distance: fifty focal lengths (common practice, no source). */
export const usualDistance = (focalLength: Millimetres): Millimetres => millimetres(focalLength * 50);
