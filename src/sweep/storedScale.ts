// A body's scale as it is stored, with the kit and with every sweep.
import * as v from 'valibot';
import { Steps } from '../storedUnits.ts';

/** A body's corrections: from `min` to `max` in strides of `step`; 0 need not be in the middle. */
export const Scale = v.pipe(
  v.object({ min: Steps, max: Steps, step: v.pipe(v.number(), v.integer(), v.minValue(1)) }),
  v.check((scale) => scale.max - scale.min >= 2 * scale.step, 'scale too short'),
  v.check((scale) => (scale.max - scale.min) % scale.step === 0, 'step does not divide'),
);
export type Scale = v.InferOutput<typeof Scale>;
