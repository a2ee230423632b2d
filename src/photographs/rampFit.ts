// The depth of the focused plane from how blur runs along the ramp: for each depth tried, the constant blur and its growth are fitted to
// the readings, and the best depth is where they fit best; the interval holds the depths that fit hardly worse (profile likelihood:
// D. M. Bates, D. G. Watts, Nonlinear Regression Analysis, 1988, ch. 6). Readings that fit nothing count less (the biweight: A. E. Beaton,
// J. W. Tukey, Technometrics 16(2), 1974).
import { defocusSquare, discSwell } from './defocusModel.ts';
import type { RampReading } from './followedEdge.ts';
import { solveLinear } from './linearSystem.ts';
import { medianOf } from './median.ts';
import { studentQuantile } from './studentT.ts';

export interface RampFit {
  /** Depth of the focused plane and its 95 % interval, in millimetres. */
  readonly focus: number;
  readonly low: number;
  readonly high: number;
  /** Least variance of the blur of upright and of level edges, in square pixels; null where there are none. */
  readonly least: { readonly upright: number | null; readonly level: number | null };
  /** How fast the variance grows, over what the optics let expect. */
  readonly growth: number;
  /** Standard deviation of the readings about the fit, over what each said of itself. */
  readonly unrest: number;
}

/** What the depth is looked for with: the target's distance, the growth that the optics let expect, and the depths to try. */
export interface RampQuestion {
  readonly distance: number;
  readonly growth: number;
  readonly from: number;
  readonly to: number;
}

/** Lenses shorten as they focus near, apertures are engraved in round numbers: the growth is expected to within this share (from memory). */
const GROWTH_DOUBT = 0.3;
/** A normal curve fits a disc only so well. */
const MODEL_DOUBT = 0.04;
/** Where a reading stops counting, in standard deviations (95 % efficiency: Beaton and Tukey's constant). */
const CUT = 4.685;
const TRIED = 90;
const LOOKS = 3;
/** Wide enough that no reading is cut off before the first look. */
const FIRST_UNREST = 3;

interface Variance {
  readonly depth: number;
  readonly group: 0 | 1;
  readonly value: number;
  readonly doubt: number;
}

/** Null where the readings do not carry a fit. At least eight are wanted. */
export function fitRamp(readings: readonly RampReading[], question: RampQuestion): RampFit | null {
  if (readings.length < 8) return null;
  const variances = readings.map(({ depth, runs, spread, uncertain }): Variance => {
    const value = spread ** 2;
    return { depth, group: runs === 'upright' ? 0 : 1, value, doubt: Math.hypot(2 * spread * uncertain, MODEL_DOUBT * value) };
  });
  const step = (question.to - question.from) / TRIED;
  const tried = Array.from({ length: TRIED + 1 }, (_, index) => question.from + index * step);
  const lookWith = (unrest: number): AtDepth | null => {
    const fits = tried.flatMap((focus) => fitAt(variances, question, focus, unrest) ?? []);
    if (fits.length === 0) return null;
    const coarse = fits.reduce((least, fit) => (fit.loss < least.loss ? fit : least));
    return refined(variances, question, coarse, step, unrest);
  };
  // The unrest of one look sets the measure of the next; losses are compared by the measure of the last alone.
  let unrest = FIRST_UNREST;
  let best = lookWith(unrest);
  for (let look = 1; best !== null && look < LOOKS; look += 1) {
    unrest = Math.max(1, 1.4826 * medianOf(best.rests.map(Math.abs)));
    best = lookWith(unrest);
  }
  if (best === null) return null;
  // Twice the loss is what a chi square of one degree of freedom is held against; few readings make it an F, the square of a t.
  const allowed = studentQuantile(0.975, Math.max(1, readings.length - 4)) ** 2 / 2;
  const { focus } = best;
  const worse = (at: number): boolean => (fitAt(variances, question, at, unrest)?.loss ?? Infinity) > best.loss + allowed;
  return {
    focus,
    low: edgeOf(worse, focus, question.from, step),
    high: edgeOf(worse, focus, question.to, step),
    least: { upright: least(variances, best, 0), level: least(variances, best, 1) },
    growth: best.growth / question.growth,
    unrest,
  };
}

const least = (variances: readonly Variance[], { constants }: AtDepth, group: 0 | 1): number | null =>
  variances.some((variance) => variance.group === group) ? constants[group] : null;

interface AtDepth {
  readonly focus: number;
  readonly loss: number;
  readonly constants: readonly [number, number];
  readonly growth: number;
  readonly rests: readonly number[];
}

function fitAt(variances: readonly Variance[], { distance, growth: expected }: RampQuestion, focus: number, unrest: number): AtDepth | null {
  let weights = variances.map(({ doubt }) => 1 / doubt ** 2);
  let answer: AtDepth | null = null;
  const plain = variances.map(({ depth }) => defocusSquare(depth, focus, distance));
  let squares: readonly number[] = plain;
  for (let turn = 0; turn < 6; turn += 1) {
    const solved = solveWeighted(variances, squares, weights, expected, unrest);
    if (solved === null) return null;
    const { constants, growth } = solved;
    squares = plain.map((square, index) => square * discSwell(growth * square, constants[variances[index]!.group]));
    const rests = variances.map(({ group, value, doubt }, index) => (value - constants[group] - growth * squares[index]!) / doubt);
    const prior = ((growth / expected - 1) / GROWTH_DOUBT) ** 2 / 2;
    answer = { focus, constants, growth, rests, loss: prior + rests.reduce((sum, rest) => sum + biweight(rest / unrest), 0) };
    weights = variances.map(({ doubt }, index) => Math.max(0, 1 - (rests[index]! / unrest / CUT) ** 2) ** 2 / doubt ** 2);
  }
  return answer;
}

/** Half the square near zero, even beyond the cut. */
function biweight(z: number): number {
  const most = CUT ** 2 / 6;
  return Math.abs(z) >= CUT ? most : most * (1 - (1 - (z / CUT) ** 2) ** 3);
}

function solveWeighted(
  variances: readonly Variance[],
  squares: readonly number[],
  weights: readonly number[],
  expected: number,
  unrest: number,
): { constants: readonly [number, number]; growth: number } | null {
  const matrix = [
    [1e-9, 0, 0],
    [0, 1e-9, 0],
    [0, 0, 0],
  ];
  const right = [0, 0, 0];
  for (const [index, { group, value }] of variances.entries()) {
    const weight = weights[index]! / unrest ** 2;
    const square = squares[index]!;
    matrix[group]![group]! += weight;
    matrix[group]![2]! += weight * square;
    matrix[2]![group]! += weight * square;
    matrix[2]![2]! += weight * square * square;
    right[group]! += weight * value;
    right[2]! += weight * square * value;
  }
  const trust = 1 / (GROWTH_DOUBT * expected) ** 2;
  matrix[2]![2]! += trust;
  right[2]! += trust * expected;
  const solved = solveLinear(matrix, right);
  if (solved === null) return null;
  const [upright, level, growth] = solved as [number, number, number];
  return growth > 0 ? { constants: [upright, level], growth } : null;
}

/** The least loss near a depth, by golden section (J. Kiefer, Proc. AMS 4, 1953). */
function refined(variances: readonly Variance[], question: RampQuestion, coarse: AtDepth, step: number, unrest: number): AtDepth {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [Math.max(question.from, coarse.focus - step), Math.min(question.to, coarse.focus + step)];
  let best = coarse;
  for (let turn = 0; turn < 16; turn += 1) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)].map((at) => fitAt(variances, question, at, unrest)) as [
      AtDepth | null,
      AtDepth | null,
    ];
    for (const fit of [a, b]) if (fit !== null && fit.loss < best.loss) best = fit;
    if ((a?.loss ?? Infinity) < (b?.loss ?? Infinity)) high = low + golden * (high - low);
    else low = high - golden * (high - low);
  }
  return best;
}

/** Outward from the best depth to where the fit is worse, at most to the end of what is tried. */
function edgeOf(worse: (at: number) => boolean, best: number, end: number, step: number): number {
  const way = Math.sign(end - best);
  let inside = best;
  // Ever longer strides: the interval may be a hair or all of the ramp.
  for (let stride = step / 64; ; stride *= 1.5) {
    const next = inside + way * stride;
    if (way * (end - next) <= 0) return worse(end) ? halved(worse, inside, end) : end;
    if (worse(next)) return halved(worse, inside, next);
    inside = next;
  }
}

function halved(worse: (at: number) => boolean, inside: number, outside: number): number {
  let [good, bad] = [inside, outside];
  for (let turn = 0; turn < 10; turn += 1) {
    const middle = (good + bad) / 2;
    if (worse(middle)) bad = middle;
    else good = middle;
  }
  return (good + bad) / 2;
}
