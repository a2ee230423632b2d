// The units as they are read from outside: the schema behind a brand is the only way a plain number becomes one, so it is
// checked where it enters. Apart from units.ts, which the panel needs before it has read anything.
import * as v from 'valibot';

/** A correction as the body counts it: a whole number, positive moves focus away from the camera. */
export const Steps = v.pipe(v.number(), v.integer(), v.minValue(-200), v.maxValue(200), v.brand('Steps'));
export type Steps = v.InferOutput<typeof Steps>;

/** A length of time. */
export const Seconds = v.pipe(v.number(), v.finite(), v.minValue(0), v.brand('Seconds'));
export type Seconds = v.InferOutput<typeof Seconds>;

/** A moment: milliseconds since 1970, UTC. */
export const Moment = v.pipe(v.number(), v.finite(), v.minValue(0), v.brand('Moment'));
export type Moment = v.InferOutput<typeof Moment>;

/** A length: focal length, distance. */
export const Millimetres = v.pipe(v.number(), v.finite(), v.minValue(0), v.brand('Millimetres'));
export type Millimetres = v.InferOutput<typeof Millimetres>;
