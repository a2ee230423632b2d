// Where an edge lies before it is known to a pixel: the rows beside the line that was told are added up along it, and the steepest rise of
// that sum near its middle is the edge. What else stands beside it is kept out of the rows that its place is then read from.
import { failed, got, type Result } from '../result.ts';
import { cutStrip, type EdgeCourse, type EdgeLine } from './edgeStrip.ts';
import type { Plane } from './plane.ts';

export interface RoughEdge {
  readonly line: EdgeLine;
  /** Pixels to either side that hold its blur, and nothing else. */
  readonly reach: number;
}

export type RoughFault = { readonly is: 'no edge' } | { readonly is: 'two edges'; readonly apart: number };

/** Shares of the steepest rise: where the edge's own ends, and where another thing's begins (halos of sharpening stay below). */
const ENDS = 0.1;
const OTHER = 0.4;
/** Pixels to either side: what is usual, and the least that a place can be read from. */
const USUAL = 8;
const LEAST = 4;

/** `reach` in pixels to either side of the line that was told, at least 8. */
export function roughEdge(plane: Plane, course: EdgeCourse, reach: number): Result<RoughEdge, RoughFault> {
  const slope = slopeAlong(plane, course, reach);
  let peak = reach;
  for (let at = Math.ceil(reach / 2); at <= 1.5 * reach; at++) if (Math.abs(slope[at]!) > Math.abs(slope[peak]!)) peak = at;
  if (!(Math.abs(slope[peak]!) > 0)) return failed({ is: 'no edge' });
  const share = (away: number): readonly number[] => [peak - away, peak + away].map((at) => (slope[at] ?? 0) / slope[peak]!);
  let width = 1;
  while (width < reach && share(width).some((each) => each > ENDS)) width++;
  const other = (away: number): boolean => share(away).some((each) => each < -OTHER || (away >= width && each > OTHER));
  let clear = 2;
  while (clear < reach && !other(clear)) clear++;
  const held = Math.min(reach, Math.max(USUAL, width + 4), clear === reach ? reach : clear - 2);
  if (held < LEAST || held < width - 1) return failed({ is: 'two edges', apart: clear });
  return got({ line: { ...course.line, at: course.line.at + peak - reach }, reach: held });
}

/** Of the rows' mean, over two pixels to either side: one pixel's noise is no edge. */
function slopeAlong(plane: Plane, course: EdgeCourse, reach: number): Float64Array {
  const { rows, across, light } = cutStrip(plane, course, course.line, reach);
  const mean = new Float64Array(across);
  for (let row = 0; row < rows; row++) for (let at = 0; at < across; at++) mean[at]! += light[row * across + at]! / rows;
  return mean.map((_, at) => (at < 2 || at > across - 2 ? 0 : mean[at]! + mean[at + 1]! - mean[at - 1]! - mean[at - 2]!));
}
