// A converter lengthens the lens by its factor, and with it the f-number (common practice); along the axis it
// stretches by the factor squared (longitudinal magnification). That is why a lens needs its own sweep with each
// converter.
import * as v from 'valibot';
import { millimetres, type Millimetres } from '../units.ts';
import { fNumber, writeNumber, type FNumber } from './quantity.ts';

const FACTOR = 'Enter the converter\u2019s factor as it is engraved, from 1 to 3: such as 1.4.';
export const ConverterFactor = v.pipe(
  v.number(FACTOR),
  v.minValue(1, FACTOR),
  v.maxValue(3, FACTOR),
  v.brand('ConverterFactor'),
);
export type ConverterFactor = v.InferOutput<typeof ConverterFactor>;

export const apertureWith = (factor: ConverterFactor, aperture: FNumber): FNumber => fNumber(aperture * factor);
export const focalLengthWith = (factor: ConverterFactor, focalLength: Millimetres): Millimetres =>
  millimetres(focalLength * factor);

/** What becomes of an error of the lens and of one of the body, if a step is worth the same share of depth of focus. */
export const convertedError = (factor: ConverterFactor) => ({
  /** The lens's focus error at the sensor, as a length. */
  lensLength: factor ** 2,
  /** The same counted in steps, which grow with the f-number. */
  lensSteps: factor,
  /** The body's error in steps: its length stays. */
  bodySteps: 1 / factor,
});

/** What the converter does to the aperture and to a correction, for the screen; `effective` is the aperture with it. */
export function convertedInWords(factor: ConverterFactor, effective: FNumber): string {
  const { lensSteps, bodySteps } = convertedError(factor);
  return (
    `With the converter the aperture is f/${writeNumber(effective, 1)}. An error of the lens counts ` +
    `${writeNumber(lensSteps, 2)} times as many steps, one of the body ${writeNumber(bodySteps, 2)} times: measure it by itself.`
  );
}
