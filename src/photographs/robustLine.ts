// A straight line that one bad shot does not bend: it starts at the median of the slopes of all pairs (H. Theil, Proc. Kon. Ned. Akad.
// Wetensch. 53, 1950; P. K. Sen, J. Am. Stat. Assoc. 63, 1968), goes on by least squares that weighs points far off less (the biweight:
// A. E. Beaton, J. W. Tukey, Technometrics 16(2), 1974), and says how sure its numbers are by P. J. Huber, Robust Statistics, 1981, 7.6
// (the last from memory). Where x is uncertain, too, and by as much for every point, its share lies in the scatter of y about the line (the
// effective variance: J. Orear, Am. J. Phys. 50(10), 1982).
import { medianOf } from './median.ts';
import { straightLine, type StraightLine } from './straightLine.ts';

export interface MeasuredPoint {
  readonly x: number;
  readonly y: number;
  /** Standard deviation of y as it was measured; what the points scatter beyond it is found from them. */
  readonly doubt: number;
}

export interface RobustLine {
  readonly intercept: number;
  readonly slope: number;
  readonly variance: StraightLine['unit'];
  /** Degrees of freedom that the variances rest on. */
  readonly freedom: number;
  /** Standard deviation of one point about the line. */
  readonly scatter: number;
  /** Of each point, from 1 down to 0. */
  readonly weights: readonly number[];
}

const CUT = 4.685;

/** Null where fewer than four points, or fewer than two places in x, are given. */
export function robustLine(points: readonly MeasuredPoint[]): RobustLine | null {
  const start = pairedLine(points);
  if (start === null || points.length < 4) return null;
  const freedom = points.length - 2;
  let { intercept, slope } = start;
  let weights = points.map(() => 1);
  let [scatter, own] = [0, points.map(() => 1)];
  for (let turn = 0; turn < 30; turn += 1) {
    const rests = points.map(({ x, y }) => y - intercept - slope * x);
    // The scatter settles with the first turns; moving it on would let it run away from the weights.
    if (turn < 3) {
      scatter = scatterOf(rests, points);
      own = points.map(({ doubt }) => 1 / (beyond(scatter, points) + doubt ** 2));
    }
    weights = rests.map((rest, index) => Math.max(0, 1 - ((rest * Math.sqrt(own[index]!)) / CUT) ** 2) ** 2);
    const line = straightLine(points.map(({ x, y }, index) => ({ x, y, weight: weights[index]! * own[index]! })));
    if (line === null) return null;
    const moved = Math.abs(line.slope - slope) + Math.abs(line.intercept - intercept);
    ({ intercept, slope } = line);
    if (moved < 1e-12 * (Math.abs(slope) + Math.abs(intercept))) break;
  }
  const line = straightLine(points.map(({ x, y }, index) => ({ x, y, weight: own[index]! })));
  if (line === null) return null;
  const factor = spreadFactor(points.map(({ x, y }, index) => ((y - intercept - slope * x) * Math.sqrt(own[index]!)) / CUT));
  const { unit } = line;
  return {
    intercept,
    slope,
    variance: { intercept: unit.intercept * factor, slope: unit.slope * factor, both: unit.both * factor },
    freedom: Math.max(1, freedom - weights.filter((weight) => weight < 0.1).length),
    scatter,
    weights,
  };
}

function pairedLine(points: readonly MeasuredPoint[]): { intercept: number; slope: number } | null {
  const slopes = points.flatMap((a, index) => points.slice(index + 1).flatMap((b) => (a.x === b.x ? [] : [(b.y - a.y) / (b.x - a.x)])));
  if (slopes.length === 0) return null;
  const slope = medianOf(slopes);
  return { slope, intercept: medianOf(points.map(({ x, y }) => y - slope * x)) };
}

/**
 * From the median of what is left, widened for few points (P. J. Rousseeuw, A. M. Leroy, Robust Regression and Outlier Detection, 1987, 5.1); never less
 * than what was measured.
 */
function scatterOf(rests: readonly number[], points: readonly MeasuredPoint[]): number {
  const widened = 1.4826 * medianOf(rests.map(Math.abs)) * (1 + 5 / (points.length - 2));
  return Math.max(widened, medianOf(points.map(({ doubt }) => doubt)), 1e-9);
}

/** Variance beyond what was measured, the same for all. */
const beyond = (scatter: number, points: readonly MeasuredPoint[]): number =>
  Math.max(scatter ** 2 - medianOf(points.map(({ doubt }) => doubt ** 2)), (0.01 * scatter) ** 2);

/** Huber's estimate of the variance over that of plain least squares at a scatter of 1; `u` in units of the cut. */
function spreadFactor(u: readonly number[]): number {
  const count = u.length;
  const inside = u.map((value) => (Math.abs(value) < 1 ? value : null));
  const pulls = inside.map((value) => (value === null ? 0 : CUT * value * (1 - value ** 2) ** 2));
  const slopes = inside.map((value) => (value === null ? 0 : (1 - value ** 2) * (1 - 5 * value ** 2)));
  const mean = slopes.reduce((sum, slope) => sum + slope, 0) / count;
  const spread = slopes.reduce((sum, slope) => sum + (slope - mean) ** 2, 0) / count;
  const small = 1 + ((2 / count) * spread) / mean ** 2;
  return (small ** 2 * pulls.reduce((sum, pull) => sum + pull ** 2, 0)) / (count - 2) / mean ** 2;
}
