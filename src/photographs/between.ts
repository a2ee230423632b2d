// Whether four marks, known to half a pixel or so and one of them perhaps missing, have between them what a print has there. A few
// hundred places are looked at, so that only what is like a print is looked at closely.
import type { Point } from '../optics/print/drawing.ts';
import { homographyFrom } from './homography.ts';
import { agrees, type Pattern } from './pattern.ts';
import type { Quad } from './quad.ts';
import type { SquaresSeen } from './squaresSeen.ts';

export function shows(seen: SquaresSeen, quads: readonly (Quad | null)[], patterns: readonly Pattern[], least: number): boolean {
  const { plane, factor } = seen.between(quads.filter((quad) => quad !== null));
  const middles = fourth(quads.map((quad) => quad && middleOf(quad, factor)));
  const toPicture = middles && homographyFrom(middles.map((to, index) => ({ from: { x: index % 2, y: Math.floor(index / 2) }, to })));
  return toPicture !== null && patterns.some((pattern) => [false, true].some((turned) => agrees(plane, toPicture, pattern, turned, least)));
}

const middleOf = ([a, b, c, d]: Quad, factor: number): Point => ({ x: (a.x + b.x + c.x + d.x) / 4 / factor, y: (a.y + b.y + c.y + d.y) / 4 / factor });

/** With one missing, the corner that makes a parallelogram of the others. */
function fourth(middles: readonly (Point | null)[]): readonly Point[] | null {
  const missing = middles.indexOf(null);
  if (missing < 0) return middles.filter((middle) => middle !== null);
  const [opposite, one, other] = [middles[3 - missing], middles[missing ^ 1], middles[missing ^ 2]];
  if (!opposite || !one || !other) return null;
  return middles.map((middle) => middle ?? { x: one.x + other.x - opposite.x, y: one.y + other.y - opposite.y });
}
