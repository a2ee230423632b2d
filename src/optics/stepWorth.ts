// What one step of correction moves, as an estimate: makers publish little. The usual assumption here is an eighth of
// N·c, so that sixteen steps span the geometric depth of focus; it is a setting, and every figure from it says 'an
// estimate'. A length along the axis at the sensor is 1/m² as long at the target (longitudinal magnification).
import * as v from 'valibot';
import { millimetres, type Millimetres } from '../units.ts';
import type { Blur } from './depthOfField.ts';
import { writeNumber, type Magnification } from './quantity.ts';

const SENTENCE = 'Enter what one step is worth as a share of half the depth of focus, from 0.01 to 1: 0.125 is usual.';

/** One step over N·c, half the depth of focus. */
export const StepWorth = v.pipe(
  v.number(SENTENCE),
  v.minValue(0.01, SENTENCE),
  v.maxValue(1, SENTENCE),
  v.brand('StepWorth'),
);
export type StepWorth = v.InferOutput<typeof StepWorth>;
export const USUAL_STEP_WORTH = 0.125 as StepWorth;

/** Travel of the sharp image at the sensor for one step. */
export const stepAtSensor = ({ aperture, confusion }: Blur, worth: StepWorth): Millimetres =>
  millimetres(worth * aperture * confusion);

/** The same at the target. */
export const stepAtTarget = (blur: Blur, worth: StepWorth, m: Magnification): Millimetres =>
  millimetres(stepAtSensor(blur, worth) / (m * m));

export interface BandWidth {
  /** The band over the depth of focus. */
  readonly share: number;
  readonly looks: 'narrow' | 'plausible' | 'wide';
  readonly say: string;
}

/** Where a band's width stops being plausible, as shares of the depth of focus (common practice, no source). */
const NARROW = 0.05;
const WIDE = 1.25;

/** Whether a band of so many values is what this depth of focus would give. Each value stands for one step. */
export function bandWidth(values: number, worth: StepWorth): BandWidth {
  const share = (values * worth) / 2;
  const figure = `The band spans about ${writeNumber(share * 100, 0)} % of the depth of focus, an estimate`;
  if (share < NARROW) {
    return {
      share,
      looks: 'narrow',
      say: `${figure}: that is narrow; check the light and that the focus ring did not move.`,
    };
  }
  if (share > WIDE) {
    return {
      share,
      looks: 'wide',
      say: `${figure}: that is wide; check the aperture, the contrast of the target and the light.`,
    };
  }
  return { share, looks: 'plausible', say: `${figure}: that is plausible.` };
}
