// A straight edge between black and white that leans a little against the rows of the picture, so that its blur can be
// measured finer than a pixel.
import { HALF_SIDE, onMark, type PrintMark } from './marks.ts';
import type { Point } from './drawing.ts';

export interface SlantedEdge {
  readonly at: 'middle' | 'corner';
  readonly runs: 'upright' | 'level';
  /** Its ends in millimetres, kept clear of the corners. */
  readonly from: Point;
  readonly to: Point;
}

/** Share of a side that is used: near a corner the other side's blur comes in. */
const USED = 0.76;

/** The four sides of a leaning square. */
export function sidesOf(square: Pick<PrintMark, 'middle' | 'box' | 'lean'>, at: SlantedEdge['at']): SlantedEdge[] {
  const near = HALF_SIDE * USED;
  return [-HALF_SIDE, HALF_SIDE].flatMap((off): SlantedEdge[] => [
    { at, runs: 'upright', from: onMark(square, off, -near), to: onMark(square, off, near) },
    { at, runs: 'level', from: onMark(square, -near, off), to: onMark(square, near, off) },
  ]);
}
