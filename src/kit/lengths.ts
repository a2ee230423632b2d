// Focal lengths and distances that a viewfinder autofocus body can meet. What lies outside is a slip of the unit.
import * as v from 'valibot';
import { millimetres, type Millimetres } from '../units.ts';

const length = (least: number, most: number, sentence: string) =>
  v.pipe(v.number(sentence), v.minValue(least, sentence), v.maxValue(most, sentence), v.brand('Millimetres'));

export const FocalLength = length(4, 2000, 'Enter the focal length in millimetres, from 4 to 2000.');
export const Distance = length(50, 500_000, 'Enter the distance in metres, from 0.05 to 500.');

/** The general-purpose distance: fifty focal lengths (common practice, no source). */
export const usualDistance = (focalLength: Millimetres): Millimetres => millimetres(focalLength * 50);
