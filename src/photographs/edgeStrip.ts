// The pixels beside an edge, cut so that they follow it: of each row that crosses the edge, as many pixels on the one side as on the
// other. Level edges are cut through columns, so that all that follows reads one kind of edge. With 'along' the way the edge
// runs and 'across' the other one, both in pixels of the picture, the edge is across = at + lean · along.
import type { Point } from '../optics/print/drawing.ts';
import type { Plane } from './plane.ts';

/** An edge as it was found: from end to end, in pixels of the picture; pixel centres lie at +0.5. */
export interface EdgePlace {
  readonly from: Point;
  readonly to: Point;
}

export interface EdgeCourse {
  readonly runs: 'upright' | 'level';
  /** The first row whose middle lies between the ends, and the one after the last. */
  readonly first: number;
  readonly end: number;
  /** As it was found. */
  readonly line: EdgeLine;
}

export interface EdgeLine {
  readonly at: number;
  readonly lean: number;
}

export interface EdgeStrip {
  readonly rows: number;
  /** Pixels a row: twice the reach. */
  readonly across: number;
  readonly reach: number;
  /** Where each row's first pixel lies from the edge, along the row: from -reach to 1 - reach. */
  readonly start: Float64Array;
  /** Row by row. */
  readonly light: Float64Array;
}

export const acrossAt = (line: EdgeLine, along: number): number => line.at + line.lean * along;

/** Rows run straight across the edge where it is nearer to upright, columns do where it is nearer to level. */
export function edgeCourse({ from, to }: EdgePlace, plane: Plane): EdgeCourse {
  const runs = Math.abs(to.y - from.y) >= Math.abs(to.x - from.x) ? 'upright' : 'level';
  const turned = (point: Point) => (runs === 'upright' ? { along: point.y, across: point.x } : { along: point.x, across: point.y });
  const [one, other] = [turned(from), turned(to)];
  const length = other.along - one.along;
  const lean = length === 0 ? 0 : (other.across - one.across) / length;
  const least = Math.max(0, Math.min(one.along, other.along));
  const most = Math.min(runs === 'upright' ? plane.height : plane.width, Math.max(one.along, other.along));
  return { runs, first: Math.ceil(least - 0.5), end: Math.floor(most + 0.5), line: { at: one.across - lean * one.along, lean } };
}

/** How far every row of the course goes on both sides of the line before the picture ends, in whole pixels. */
export function roomBeside(plane: Plane, { runs, first, end }: EdgeCourse, line: EdgeLine): number {
  const size = runs === 'upright' ? plane.width : plane.height;
  const [one, other] = [acrossAt(line, first + 0.5), acrossAt(line, end - 0.5)];
  return Math.floor(Math.min(one, other, size - one, size - other)) - 1;
}

/** All rows of the course, as far as `reach` on both sides of the line, in whole pixels, at most the room beside it. */
export function cutStrip(plane: Plane, { runs, first, end }: EdgeCourse, line: EdgeLine, reach: number): EdgeStrip {
  const rows = end - first;
  const across = 2 * reach;
  const start = new Float64Array(rows);
  const light = new Float64Array(rows * across);
  const [step, stride] = runs === 'upright' ? [1, plane.width] : [plane.width, 1];
  for (let row = 0; row < rows; row++) {
    const edge = acrossAt(line, first + row + 0.5);
    const pixel = Math.ceil(edge - reach - 0.5);
    start[row] = pixel + 0.5 - edge;
    const from = (first + row) * stride + pixel * step;
    for (let at = 0; at < across; at++) light[row * across + at] = plane.light[from + at * step]!;
  }
  return { rows, across, reach, start, light };
}
