// One shot as a bracket or a check gets it: where focus fell, measured as well as the pictures of this run were.
import type { WithInterval } from '../../../src/photographs/withInterval.ts';
import type { Random } from '../../../src/practice/random.ts';
import type { MeasuredPicture } from './measuredPictures.ts';

/** The truth in shares of the depth of field; the error and the interval of one of the pictures, drawn by chance, come on top. */
export function measuredShot(truth: number, measured: readonly MeasuredPicture[], random: Random): WithInterval {
  const answered = measured.filter(({ off }) => off !== null);
  const { off, margin } = answered[Math.floor(random() * answered.length)] ?? { off: 0.02, margin: 0.04 };
  const value = truth + (random() < 0.5 ? -1 : 1) * (off ?? 0);
  return { value, low: value - margin, high: value + margin };
}

/** Sixteen steps to the depth of field, as the bench estimates. */
export const STEP = 1 / 16;
/** Standard deviation of autofocus from shot to shot, in steps (common practice, no source). */
export const SCATTER = { least: 0.2, most: 0.8 } as const;
