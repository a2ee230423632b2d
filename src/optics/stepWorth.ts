// What one step of correction moves, as an estimate: makers publish little. The usual assumption here is an eighth of
// N·c, so that sixteen steps span the geometric depth of focus; it is a setting, and every figure from it says 'an
// estimate'. A length along the axis at the sensor is 1/m² as long at the target (longitudinal magnification).
import * as v from 'valibot';
import { millimetres, type Millimetres } from '../units.ts';
import type { Blur } from './depthOfField.ts';
import { plain } from './fault.ts';
import type { Magnification } from './quantity.ts';

const OTHERWISE = plain('no step worth');

/** One step over N·c, half the depth of focus. */
export const StepWorth = v.pipe(v.number(OTHERWISE), v.minValue(0.01, OTHERWISE), v.maxValue(1, OTHERWISE), v.brand('StepWorth'));
export type StepWorth = v.InferOutput<typeof StepWorth>;
export const USUAL_STEP_WORTH = 0.125 as StepWorth;

/** Travel of the sharp image at the sensor for one step. */
export const stepAtSensor = ({ aperture, confusion }: Blur, worth: StepWorth): Millimetres => millimetres(worth * aperture * confusion);

/** The same at the target. */
export const stepAtTarget = (blur: Blur, worth: StepWorth, m: Magnification): Millimetres => millimetres(stepAtSensor(blur, worth) / (m * m));

/** What a step is worth that was measured at the target, in place of the estimate; null where the bench takes no such worth. */
export function worthOfStep(atTarget: Millimetres, { aperture, confusion }: Blur, m: Magnification): StepWorth | null {
  const read = v.safeParse(StepWorth, (atTarget * m * m) / (aperture * confusion));
  return read.success ? read.output : null;
}

export interface BandWidth {
  /** The band over the depth of focus. */
  readonly share: number;
  readonly looks: 'narrow' | 'plausible' | 'wide';
}

/** Where a band's width stops being plausible, as shares of the depth of focus (common practice, no source). */
const NARROW = 0.05;
const WIDE = 1.25;

/** Whether a band of so many values is what this depth of focus would give. Each value stands for one step. */
export function bandWidth(values: number, worth: StepWorth): BandWidth {
  const share = (values * worth) / 2;
  if (share < NARROW) return { share, looks: 'narrow' };
  return { share, looks: share > WIDE ? 'wide' : 'plausible' };
}
