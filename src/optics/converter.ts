// A converter lengthens the lens by its factor, and with it the f-number (common practice); along the axis it
// stretches by the factor squared (longitudinal magnification). That is why a lens needs its own sweep with each
// converter.
import * as v from 'valibot';
import { millimetres, type Millimetres } from '../units.ts';
import { plain } from './fault.ts';
import { fNumber, type FNumber } from './quantity.ts';

const FACTOR = plain('no factor');
export const ConverterFactor = v.pipe(v.number(FACTOR), v.minValue(1, FACTOR), v.maxValue(3, FACTOR), v.brand('ConverterFactor'));
export type ConverterFactor = v.InferOutput<typeof ConverterFactor>;

export const apertureWith = (factor: ConverterFactor, aperture: FNumber): FNumber => fNumber(aperture * factor);
export const focalLengthWith = (factor: ConverterFactor, focalLength: Millimetres): Millimetres => millimetres(focalLength * factor);

/** What becomes of an error of the lens and of one of the body, if a step is worth the same share of depth of focus. */
export const convertedError = (factor: ConverterFactor) => ({
  /** The lens's focus error at the sensor, as a length. */
  lensLength: factor ** 2,
  /** The same counted in steps, which grow with the f-number. */
  lensSteps: factor,
  /** The body's error in steps: its length stays. */
  bodySteps: 1 / factor,
});
