// The units that must never be mixed up. A brand costs nothing at run time; the schema behind it is the
// only way a plain number becomes one, so what was read from outside is checked where it enters.
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

export const steps = (value: number): Steps => value as Steps;
export const seconds = (value: number): Seconds => value as Seconds;
export const moment = (value: number): Moment => value as Moment;
export const millimetres = (value: number): Millimetres => value as Millimetres;

/** Time that has run between two moments, never negative (a clock set back counts as no time). */
export const between = (from: Moment, to: Moment): Seconds => seconds(Math.max(0, (to - from) / 1000));
