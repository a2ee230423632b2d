// The plane-to-plane mapping of a pinhole: from millimetres of a print to pixels. Least squares over pairs of points, each side
// first moved to its centroid and scaled to a mean distance of the square root of two, without which the equations are
// ill-conditioned (R. Hartley, In Defense of the Eight-Point Algorithm, IEEE PAMI 19:580, 1997; the equations: R. Hartley &
// A. Zisserman, Multiple View Geometry, 2nd ed. 2004, ch. 4.1).
import type { Point } from '../optics/print/drawing.ts';
import { leastSquares } from './leastSquares.ts';

/** A 3 × 3 matrix, row by row. */
export type Homography = readonly [number, number, number, number, number, number, number, number, number];

export interface PointPair {
  readonly from: Point;
  readonly to: Point;
}

export function through([a, b, c, d, e, f, g, h, i]: Homography, { x, y }: Point): Point {
  const w = g * x + h * y + i;
  return { x: (a * x + b * y + c) / w, y: (d * x + e * y + f) / w };
}

/** The way back, up to the scale that a homography does not have. */
export const inverse = ([a, b, c, d, e, f, g, h, i]: Homography): Homography => [
  e * i - f * h,
  c * h - b * i,
  b * f - c * e,
  f * g - d * i,
  a * i - c * g,
  c * d - a * f,
  d * h - e * g,
  b * g - a * h,
  a * e - b * d,
];

/** First `inner`, then `outer`. */
function after(outer: Homography, inner: Homography): Homography {
  const at = (row: number, column: number): number => [0, 1, 2].reduce((sum, k) => sum + (outer[3 * row + k] ?? 0) * (inner[3 * k + column] ?? 0), 0);
  return [at(0, 0), at(0, 1), at(0, 2), at(1, 0), at(1, 1), at(1, 2), at(2, 0), at(2, 1), at(2, 2)];
}

/** From four pairs or more, no three in line; null where they are in line, or too few. */
export function homographyFrom(pairs: readonly PointPair[]): Homography | null {
  if (pairs.length < 4) return null;
  const from = conditioner(pairs.map((pair) => pair.from));
  const to = conditioner(pairs.map((pair) => pair.to));
  if (from === null || to === null) return null;
  const rows = pairs.flatMap((pair) => {
    const [p, q] = [through(from, pair.from), through(to, pair.to)];
    return [
      { row: [p.x, p.y, 1, 0, 0, 0, -p.x * q.x, -p.y * q.x], is: q.x },
      { row: [0, 0, 0, p.x, p.y, 1, -p.x * q.y, -p.y * q.y], is: q.y },
    ];
  });
  const found = leastSquares(rows);
  if (found === null) return null;
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = found;
  return after(inverse(to), after([a, b, c, d, e, f, g, h, 1], from));
}

/** The same with what fits worst left out: pairs further off than `within`, in the units of `to`, as long as enough are left. */
export function robustHomography(pairs: readonly PointPair[], within: number): { readonly homography: Homography; readonly kept: readonly PointPair[] } | null {
  let kept = pairs;
  for (;;) {
    const homography = homographyFrom(kept);
    if (homography === null) return null;
    const errors = kept.map((pair) => misses(homography, pair));
    const worst = Math.max(...errors);
    if (worst <= within) return { homography, kept };
    if (kept.length < Math.max(8, 0.6 * pairs.length)) return null;
    kept = kept.filter((_, index) => errors[index] !== worst);
  }
}

/** How far off a pair is, in the units of `to`. */
function misses(homography: Homography, { from, to }: PointPair): number {
  const at = through(homography, from);
  return Math.hypot(at.x - to.x, at.y - to.y);
}

function conditioner(points: readonly Point[]): Homography | null {
  const x = points.reduce((sum, point) => sum + point.x, 0) / points.length;
  const y = points.reduce((sum, point) => sum + point.y, 0) / points.length;
  const spread = points.reduce((sum, point) => sum + Math.hypot(point.x - x, point.y - y), 0) / points.length;
  if (!(spread > 0)) return null;
  const scale = Math.SQRT2 / spread;
  return [scale, 0, -scale * x, 0, scale, -scale * y, 0, 0, 1];
}
