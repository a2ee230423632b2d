// The quadrangle that a spot fills, if it fills one: the two points of its hull that are farthest apart, and on either side the
// point farthest from the line between them. Hull: A. M. Andrew, Information Processing Letters 9:216, 1979.
import type { Point } from '../optics/print/drawing.ts';
import type { Spot } from './darkSpots.ts';

/** Corners the way a clock's hands go, as seen in the picture. */
export type Quad = readonly [Point, Point, Point, Point];

/** Null where the spot is no parallelogram, nearly filled. */
export function quadOf({ area, outline }: Spot): Quad | null {
  const hull = hullOf(outline);
  const inside = Math.abs(areaOf(hull));
  // A mark's dots take less than a fifth of it.
  if (hull.length < 4 || area < 0.62 * inside) return null;
  const [a, c] = farthestPair(hull);
  const [b, d] = [1, -1].map((side) => hull.reduce((best, point) => (side * beside(a, c, point) > side * beside(a, c, best) ? point : best)));
  if (!b || !d) return null;
  const middle = { x: (a.x + b.x + c.x + d.x) / 4, y: (a.y + b.y + c.y + d.y) / 4 };
  // Blur rounds the corners off: the same area with sharp ones.
  const size = Math.sqrt(inside / Math.abs(areaOf([a, b, c, d])));
  if (!(size > 0.94 && size < 1.13)) return null;
  const out = (point: Point): Point => ({ x: middle.x + size * (point.x - middle.x), y: middle.y + size * (point.y - middle.y) });
  // `b` lies on the positive side of the diagonal, which is the right-hand one where y runs down.
  const quad: Quad = [out(a), out(d), out(c), out(b)];
  return isParallelogram(quad) ? quad : null;
}

/** Sides in pixels, from each corner to the next. */
export const sidesOfQuad = (quad: Quad): [number, number, number, number] => [
  distanceBetween(quad[0], quad[1]),
  distanceBetween(quad[1], quad[2]),
  distanceBetween(quad[2], quad[3]),
  distanceBetween(quad[3], quad[0]),
];

function isParallelogram(quad: Quad): boolean {
  const [a, b, c, d] = sidesOfQuad(quad);
  const alike = (one: number, other: number, least: number): boolean => Math.min(one, other) >= least * Math.max(one, other);
  return alike(a, c, 0.75) && alike(b, d, 0.75) && alike((a + c) / 2, (b + d) / 2, 0.45);
}

export const distanceBetween = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Twice the area of the triangle, positive where the point lies to the right of the way from a to c (y runs down). */
const beside = (a: Point, c: Point, point: Point): number => (c.x - a.x) * (point.y - a.y) - (c.y - a.y) * (point.x - a.x);

/** Of a polygon; the sign tells which way round its corners go. */
export const areaOf = (points: readonly Point[]): number =>
  points.reduce((sum, a, index) => {
    const b = points[(index + 1) % points.length] ?? a;
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);

function farthestPair(points: readonly Point[]): [Point, Point] {
  let best: [Point, Point] = [points[0] ?? { x: 0, y: 0 }, points[1] ?? { x: 0, y: 0 }];
  for (const [index, a] of points.entries()) for (const b of points.slice(index + 1)) if (distanceBetween(a, b) > distanceBetween(...best)) best = [a, b];
  return best;
}

function hullOf(points: readonly Point[]): Point[] {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const chain = (ordered: readonly Point[]): Point[] => {
    const half: Point[] = [];
    for (const point of ordered) {
      for (;;) {
        const [before, last] = [half.at(-2), half.at(-1)];
        if (!before || !last || beside(before, last, point) > 0) break;
        half.pop();
      }
      half.push(point);
    }
    return half.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.toReversed())];
}
