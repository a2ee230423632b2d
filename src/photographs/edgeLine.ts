// Where the edge lies in each row, and the straight line through these places (ISO 12233:2017, annex D: the centroid of each row's
// derivative, a fit by least squares; P. D. Burns, Slanted-edge MTF for digital camera and scanner analysis, PICS 2000).
// The derivative is weighed by a window about the line of the round before, so that noise far from the edge tells little;
// such a centroid falls short of the true place, and the rounds take up what is missing. Rows that lie off the
// line, as at a speck of dust or past the edge's end, are left out.
import type { EdgeLine, EdgeStrip } from './edgeStrip.ts';
import { medianOf } from './median.ts';

export interface EdgeFit {
  /** What to add to the line that the strip was cut along; `at` counts from the strip's middle row. */
  readonly shift: EdgeLine;
  /** The rows that lie on it. */
  readonly kept: readonly number[];
  /** Standard deviation of the kept rows about it, in pixels. */
  readonly scatter: number;
}

/** A row whose step is less than this share of the usual one shows another thing. */
const LEAST_STEP = 0.5;
/** Standard deviations from the line at which a row is left out (common practice, no source). */
const OUTLYING = 3;
const ROUNDS = 4;
/** Of normal deviations: standard deviation over the median of their sizes. */
const NORMAL = 1.4826;
/** No row is left out for less than this, in pixels. */
const FINEST = 0.05;

/** Null where fewer than two rows show a step. */
export function fitEdge(strip: EdgeStrip): EdgeFit | null {
  const places = centroids(strip);
  const middle = (strip.rows - 1) / 2;
  let kept = Array.from(places.keys()).filter((row) => Number.isFinite(places[row]!));
  let shift = leastSquares(kept, places, middle);
  for (let round = 0; round < ROUNDS && shift !== null; round++) {
    const line = shift;
    const off = (row: number): number => Math.abs(places[row]! - line.at - line.lean * (row - middle));
    const limit = OUTLYING * Math.max(FINEST, NORMAL * medianOf(kept.map(off)));
    // Every row is asked again: the line has moved.
    const next = Array.from(places.keys()).filter((row) => Number.isFinite(places[row]!) && off(row) <= limit);
    const settled = next.length === kept.length;
    kept = next;
    shift = leastSquares(kept, places, middle);
    if (settled) break;
  }
  if (shift === null) return null;
  const { at, lean } = shift;
  const squares = kept.reduce((sum, row) => sum + (places[row]! - at - lean * (row - middle)) ** 2, 0);
  return { shift, kept, scatter: Math.sqrt(squares / kept.length) };
}

/** Of each row, from the line it was cut along, in pixels; not a number where the row shows no such step. */
function centroids({ rows, across, reach, start, light }: EdgeStrip): Float64Array {
  const steps = new Float64Array(rows);
  const moments = new Float64Array(rows);
  for (let row = 0; row < rows; row++) {
    for (let at = 1; at < across; at++) {
      const place = start[row]! + at - 0.5;
      const weight = Math.cos((Math.PI / 2) * Math.min(1, Math.abs(place) / reach)) ** 2;
      const change = weight * (light[row * across + at]! - light[row * across + at - 1]!);
      steps[row]! += change;
      moments[row]! += change * place;
    }
  }
  const usual = medianOf(steps);
  return moments.map((moment, row) => (usual !== 0 && steps[row]! / usual >= LEAST_STEP ? moment / steps[row]! : Number.NaN));
}

function leastSquares(rows: readonly number[], places: Float64Array, middle: number): EdgeLine | null {
  if (rows.length < 2) return null;
  const mean = (of: (row: number) => number): number => rows.reduce((sum, row) => sum + of(row), 0) / rows.length;
  const along = mean((row) => row - middle);
  const across = mean((row) => places[row]!);
  const spread = mean((row) => (row - middle - along) ** 2);
  const lean = mean((row) => (row - middle - along) * (places[row]! - across)) / spread;
  return { at: across - lean * along, lean };
}
