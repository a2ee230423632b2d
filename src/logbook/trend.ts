// Whether the centre of one situation drifts over months: a line through its sweeps, each weighed by its own interval and by the
// spread between sweeps. Moments' estimate of that spread about a line after Thompson & Sharp (1999, Stat. Med. 18:2693); the line's
// interval after Knapp & Hartung (2003, Stat. Med. 22:2693), with Student's t, and never narrower than the sweeps' own intervals make it.
import { studentQuantile } from '../photographs/studentT.ts';
import { moment, type Moment } from '../units.ts';
import { estimateOf, type Estimate } from './combined.ts';
import type { Measured } from './measured.ts';

export interface Trend {
  /** The first and the last sweep that the line goes through. */
  readonly from: Moment;
  readonly to: Moment;
  readonly count: number;
  /** How many steps the centre moved from the first to the last, with 95 % interval. */
  readonly moved: Known;
  /** `drift`: the interval leaves out that it stood still; `none`: it lies within half a band, so that the value still serves. */
  readonly tells: 'drift' | 'none';
  /** The line: its height at `middle`, its slope in steps a millisecond, their variances, and how many of their errors 95 % takes. */
  readonly line: {
    readonly middle: Moment;
    readonly level: number;
    readonly slope: number;
    readonly levelVariance: number;
    readonly slopeVariance: number;
    readonly errors: number;
  };
}

interface Known {
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

type Dated = Estimate & { readonly at: Moment };

/** Of three, Student's t of one degree of freedom would tell nothing: 12.7 errors to either side. */
const FEWEST = 4;
/** Of one day and the next no drift over months can be told. */
const SHORTEST = 14 * 86_400_000;

/**
 * Null for fewer than four sweeps whose interval is known, for a time of less than two weeks (common practice, no source), and where
 * the line tells nothing: neither that the centre moved, nor that it stayed within half a band.
 */
export function trendOf(measured: readonly Pick<Measured, 'at' | 'centre' | 'interval' | 'low' | 'high'>[]): Trend | null {
  const sweeps = measured.flatMap((one): Dated[] => {
    const estimate = estimateOf(one);
    return estimate ? [{ ...estimate, at: one.at }] : [];
  });
  const times = sweeps.map(({ at }) => at);
  const [from, to] = [moment(Math.min(...times)), moment(Math.max(...times))];
  if (sweeps.length < FEWEST || to - from < SHORTEST) return null;
  const line = lineThrough(sweeps);
  const value = line.slope * (to - from);
  const reach = line.errors * Math.sqrt(line.slopeVariance) * (to - from);
  const moved = { value, from: value - reach, to: value + reach };
  const tells = moved.from > 0 || moved.to < 0 ? 'drift' : Math.max(-moved.from, moved.to) <= halfBand(measured) ? 'none' : null;
  return tells && { from, to, count: sweeps.length, moved, tells, line };
}

/** Of the newest band both of whose ends are known: from its middle to halfway past its last value. */
function halfBand(measured: readonly Pick<Measured, 'low' | 'high'>[]): number {
  const { low = null, high = null } = measured.findLast((one) => one.low !== null && one.high !== null) ?? {};
  return low === null || high === null ? 0 : (high - low + 1) / 2;
}

/** Where the centre lay by the line at a moment, in steps, with 95 % interval. */
export function centreAt({ line }: Trend, at: number): Known {
  const away = at - line.middle;
  const value = line.level + line.slope * away;
  const reach = line.errors * Math.sqrt(line.levelVariance + line.slopeVariance * away ** 2);
  return { value, from: value - reach, to: value + reach };
}

function lineThrough(sweeps: readonly Dated[]): Trend['line'] {
  const freedom = sweeps.length - 2;
  const fixed = weighed(sweeps, 0);
  const between = Math.max(0, (fixed.scatter - freedom) / fixed.expected);
  const { middle, level, slope, sum, spread, scatter } = weighed(sweeps, between);
  const share = Math.max(1, scatter / freedom);
  return { middle: moment(middle), level, slope, levelVariance: share / sum, slopeVariance: share / spread, errors: studentQuantile(0.975, freedom) };
}

/** Least squares with weights 1 / (own variance + `between`), about the weighted middle of the times. */
function weighed(sweeps: readonly Dated[], between: number) {
  const points = sweeps.map(({ at, value, variance }) => ({ at: Number(at), value, weight: 1 / (variance + between) }));
  const total = (of: (point: (typeof points)[number]) => number): number => points.reduce((all, point) => all + of(point), 0);
  const sum = total(({ weight }) => weight);
  const middle = total(({ at, weight }) => weight * at) / sum;
  const level = total(({ value, weight }) => weight * value) / sum;
  const spread = total(({ at, weight }) => weight * (at - middle) ** 2);
  const slope = total(({ at, value, weight }) => weight * (at - middle) * (value - level)) / spread;
  const scatter = total(({ at, value, weight }) => weight * (value - level - slope * (at - middle)) ** 2);
  // How much scatter a variance of one between the sweeps adds: the trace of Thompson & Sharp's projection.
  const squared = total(({ weight }) => weight ** 2) / sum;
  const lever = total(({ at, weight }) => weight ** 2 * (at - middle) ** 2) / spread;
  return { middle, level, slope, sum, spread, scatter, expected: sum - squared - lever };
}
