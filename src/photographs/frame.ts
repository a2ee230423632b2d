// Where things lie as seen from one mark: in units of the mark, along the edges of its print. A mark's four corners give the
// mapping near it, tilt and all, and so about where the other marks of the same print must be.
import type { Point } from '../optics/print/drawing.ts';
import type { PrintKind } from '../optics/print/dots.ts';
import { HALF_SIDE, LEANS } from '../optics/print/marks.ts';
import { radians } from '../optics/quantity.ts';
import type { Quad } from './quad.ts';

export interface MarkView {
  readonly middle: Point;
  /** What one unit to the right and one down on the print make in pixels. */
  readonly right: Point;
  readonly down: Point;
}

/** Taking the quadrangle's first corner for the mark's upper left one. */
export function frameOf(kind: PrintKind, [a, b, c, d]: Quad): MarkView {
  const across = { x: (b.x - a.x + c.x - d.x) / (4 * HALF_SIDE), y: (b.y - a.y + c.y - d.y) / (4 * HALF_SIDE) };
  const along = { x: (d.x - a.x + c.x - b.x) / (4 * HALF_SIDE), y: (d.y - a.y + c.y - b.y) / (4 * HALF_SIDE) };
  const [cos, sin] = [Math.cos(radians(LEANS[kind])), Math.sin(radians(LEANS[kind]))];
  return {
    middle: { x: (a.x + b.x + c.x + d.x) / 4, y: (a.y + b.y + c.y + d.y) / 4 },
    right: { x: cos * across.x - sin * along.x, y: cos * across.y - sin * along.y },
    down: { x: sin * across.x + cos * along.x, y: sin * across.y + cos * along.y },
  };
}

/** A point of the picture in units from the mark's middle. */
export function seenFrom({ middle, right, down }: MarkView, point: Point): Point {
  const [x, y] = [point.x - middle.x, point.y - middle.y];
  const whole = right.x * down.y - right.y * down.x;
  return { x: (x * down.y - y * down.x) / whole, y: (right.x * y - right.y * x) / whole };
}

/** The quadrangle with another corner first: a quarter of a turn each. */
export function turnedQuad([a, b, c, d]: Quad, quarters: number): Quad {
  switch (quarters & 3) {
    case 1:
      return [b, c, d, a];
    case 2:
      return [c, d, a, b];
    case 3:
      return [d, a, b, c];
    default:
      return [a, b, c, d];
  }
}
