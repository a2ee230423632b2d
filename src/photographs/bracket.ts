// A bracket of corrections: a few shots at each of several values of the scale. A straight line of the focus error over the correction gives
// what one step is worth at the target, and the correction at which the error is none. Its interval is that of a ratio of two uncertain numbers
// (E. C. Fieller, J. R. Stat. Soc. B 16(2), 1954). A positive correction moves focus away from the camera, so the line climbs.
import { failed, got, type Result } from '../result.ts';
import type { Steps } from '../units.ts';
import { around, doubtOf, type WithInterval } from './withInterval.ts';
import { robustLine } from './robustLine.ts';
import { studentQuantile } from './studentT.ts';

export interface BracketShot {
  readonly correction: Steps;
  /** Millimetres from the target to the focused plane, positive behind it. */
  readonly error: WithInterval;
}

export interface BracketMeasure {
  /** Millimetres at the target for one step. */
  readonly step: WithInterval;
  /** The correction that puts focus on the target, in steps. */
  readonly centre: WithInterval;
  /** Standard deviation of one shot about the line, in millimetres at the target. */
  readonly scatter: number;
  /** The line at a correction of 0, in millimetres. */
  readonly atZero: number;
  /** Where the line lies at a correction, in millimetres. */
  readonly lineAt: (correction: number) => WithInterval;
  /** Shots that hardly count, by their place in what was given. */
  readonly apart: readonly number[];
}

export type BracketFault =
  /** Four shots at two corrections at least. */
  | { readonly is: 'too few shots' }
  /** The correction moves focus less than the shots scatter. */
  | { readonly is: 'no slope' }
  /** A greater correction brings focus nearer. */
  | { readonly is: 'runs backwards' };

/** `reference` is the error of a shot focused in live view, where there is one: the ramp need not stand quite true. */
export function measureBracket(shots: readonly BracketShot[], reference: WithInterval | null): Result<BracketMeasure, BracketFault> {
  const line = robustLine(shots.map(({ correction, error }) => ({ x: correction, y: error.value, doubt: doubtOf(error) })));
  if (line === null) return failed({ is: 'too few shots' });
  const t = studentQuantile(0.975, line.freedom);
  const { slope, variance } = line;
  if (slope ** 2 <= t ** 2 * variance.slope) return failed({ is: 'no slope' });
  if (slope < 0) return failed({ is: 'runs backwards' });
  const intercept = line.intercept - (reference?.value ?? 0);
  const interceptVariance = variance.intercept + (reference === null ? 0 : doubtOf(reference) ** 2);
  return got({
    step: around(slope, t * Math.sqrt(variance.slope)),
    centre: ratio(-intercept, slope, { above: interceptVariance, below: variance.slope, both: -variance.both }, t),
    scatter: line.scatter,
    atZero: line.intercept,
    lineAt: (x) => around(line.intercept + slope * x, t * Math.sqrt(variance.intercept + 2 * x * variance.both + x ** 2 * variance.slope)),
    apart: line.weights.flatMap((weight, index) => (weight < 0.1 ? [index] : [])),
  });
}

/** Fieller's interval: every x for which above - x·below may be none. The slope is known to differ from none. */
function ratio(above: number, below: number, variance: { above: number; below: number; both: number }, t: number): WithInterval {
  const a = below ** 2 - t ** 2 * variance.below;
  const b = above * below - t ** 2 * variance.both;
  const c = above ** 2 - t ** 2 * variance.above;
  const root = Math.sqrt(Math.max(0, b ** 2 - a * c));
  return { value: above / below, low: (b - root) / a, high: (b + root) / a };
}

/**
 * In which order to shoot: each correction once, far jumps first so that no slow change looks like a slope, then all of it backwards, so that an even
 * drift falls on every correction alike; and so on for more rounds.
 */
export function bracketOrder(corrections: readonly Steps[], rounds: number): Steps[] {
  const rising = [...corrections].sort((a, b) => a - b);
  const half = Math.ceil(rising.length / 2);
  const upper = rising.slice(half);
  const jumping = rising.slice(0, half).flatMap((low, index) => [low, ...upper.slice(index, index + 1)]);
  return Array.from({ length: rounds }, (_, round) => (round % 2 === 0 ? jumping : jumping.toReversed())).flat();
}
