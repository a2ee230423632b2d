// The units that must never be mixed up. A brand costs nothing at run time; what was read from outside gets it by the schemas
// in storedUnits.ts.
import type { Moment, Millimetres, Seconds, Steps } from './storedUnits.ts';

export type { Moment, Millimetres, Seconds, Steps } from './storedUnits.ts';

export const steps = (value: number): Steps => value as Steps;
export const seconds = (value: number): Seconds => value as Seconds;
export const moment = (value: number): Moment => value as Moment;
export const millimetres = (value: number): Millimetres => value as Millimetres;

/** Time that has run between two moments, never negative (a clock set back counts as no time). */
export const between = (from: Moment, to: Moment): Seconds => seconds(Math.max(0, (to - from) / 1000));
