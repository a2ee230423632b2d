// An edge settled in its picture: the line it follows, to a hundredth of a pixel, and the rows that are worth reading. What four phases a pixel
// need is asked here: a lean that is neither too small nor too large, and rows enough for a whole shift.
import { degrees, fromRadians, type Degrees } from '../optics/quantity.ts';
import { failed, got, type Result } from '../result.ts';
import { fitEdge, type EdgeFit } from './edgeLine.ts';
import { acrossAt, edgeCourse, cutStrip, roomBeside, type EdgeCourse, type EdgeLine, type EdgePlace } from './edgeStrip.ts';
import type { Plane } from './plane.ts';
import { roughEdge, type RoughEdge, type RoughFault } from './roughEdge.ts';

export interface SettledEdge {
  readonly course: EdgeCourse;
  readonly line: EdgeLine;
  /** From upright or level, clockwise as seen. */
  readonly angle: Degrees;
  /** Rows on the line that cross a whole number of pixels. */
  readonly rows: readonly number[];
  /** Standard deviation of the rows about the line, in pixels. */
  readonly scatter: number;
  /** Farthest that may be looked to either side, in whole pixels. */
  readonly room: number;
}

export type SettleFault =
  | RoughFault
  /** The place is not in the picture, or ends too near to its border. */
  | { readonly is: 'edge outside' }
  | { readonly is: 'edge too short'; readonly rows: number; readonly needed: number }
  /** It leans too little or too much for its rows to fall between the pixels. */
  | { readonly is: 'edge not slanted'; readonly angle: Degrees };

/** Angles between which four phases fill well, in degrees (ISO 12233 asks for about 5; the bounds are common practice, no source). */
const LEAST_ANGLE = 2;
const MOST_ANGLE = 15;
/** Fewer rows leave a phase to chance. */
const LEAST_ROWS = 20;
/** Share of the rows that must lie on the line. */
const LEAST_KEPT = 0.7;
/** Farthest looked, in pixels; and nearest that tells anything. */
const FARTHEST = 64;
export const NEAREST = 8;
/** Pixels beside an edge that may be read: it may lie half as far off as is looked. */
export const READ_BESIDE = 1.5 * FARTHEST + 4;

export function settleEdge(plane: Plane, place: EdgePlace): Result<SettledEdge, SettleFault> {
  const course = edgeCourse(place, plane);
  const length = course.end - course.first;
  if (!(length >= LEAST_ROWS)) return failed({ is: 'edge too short', rows: Math.max(0, length || 0), needed: LEAST_ROWS });
  const roomFor = (line: EdgeLine): number => Math.min(FARTHEST, Math.floor(length / 2), roomBeside(plane, course, line));
  const told = roomFor(course.line);
  if (!(told >= NEAREST)) return failed({ is: 'edge outside' });
  const rough = roughEdge(plane, course, told);
  if (!rough.ok) return rough;
  const found = followed(plane, course, rough.value);
  if (found === null) return failed({ is: 'no edge' });
  const { line, fit } = found;
  const tilt = fromRadians(Math.atan(line.lean));
  const angle = course.runs === 'upright' ? degrees(-tilt) : tilt;
  if (Math.abs(angle) < LEAST_ANGLE || Math.abs(angle) > MOST_ANGLE) return failed({ is: 'edge not slanted', angle });
  const rows = wholeShifts(fit.kept, line.lean);
  const needed = Math.max(LEAST_ROWS, Math.ceil(1 / Math.abs(line.lean)));
  if (rows.length < needed) return failed({ is: 'edge too short', rows: fit.kept.length, needed });
  if (fit.kept.length < LEAST_KEPT * length) return failed({ is: 'no edge' });
  const room = roomFor(line);
  if (room < NEAREST) return failed({ is: 'edge outside' });
  return got({ course, line, angle, rows, scatter: fit.scatter, room });
}

/** The line, fitted in strips that follow it more and more closely. */
function followed(plane: Plane, course: EdgeCourse, { line: rough, reach }: RoughEdge): { readonly line: EdgeLine; readonly fit: EdgeFit } | null {
  const middle = (course.first + course.end) / 2;
  let line = rough;
  let fit: EdgeFit | null = null;
  for (let round = 0; round < 4; round++) {
    if (roomBeside(plane, course, line) < reach) return null;
    fit = fitEdge(cutStrip(plane, course, line, reach));
    if (fit === null) return null;
    const lean = line.lean + fit.shift.lean;
    line = { at: acrossAt(line, middle) + fit.shift.at - lean * middle, lean };
  }
  return fit && { line, fit };
}

/** As many rows as cross a whole number of pixels: every part of a pixel then counts alike. */
function wholeShifts(rows: readonly number[], lean: number): readonly number[] {
  const shifts = Math.floor(rows.length * Math.abs(lean));
  return rows.slice(0, Math.floor(shifts / Math.abs(lean) + 0.5));
}
