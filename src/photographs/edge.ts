// How sharp one slanted edge is, in the form of ISO 12233:2017, annex D: a strip along the edge, the line through its rows, the
// spread at four bins a pixel, and the frequency at which half the contrast is left. What cannot be told is a fault, never a guess: each bound
// says what it is.
import { degrees, fromRadians, type Degrees } from '../optics/quantity.ts';
import { answered, cannot, type Answer } from '../result.ts';
import { edgeExtent } from './edgeExtent.ts';
import { fitEdge, type EdgeFit } from './edgeLine.ts';
import { edgeShape } from './edgeShape.ts';
import { edgeSpread } from './edgeSpread.ts';
import { acrossAt, courseOf, cutStrip, roomBeside, type EdgeCourse, type EdgeLine, type EdgePlace } from './edgeStrip.ts';
import { edgeContrast } from './edgeTransfer.ts';
import { edgeWindow } from './edgeWindow.ts';
import { halfContrast } from './halfContrast.ts';
import type { Plane } from './plane.ts';
import { relativeDeviation } from './rowBootstrap.ts';
import { roughEdge, type RoughEdge } from './roughEdge.ts';

export interface EdgeMeasure {
  readonly runs: 'upright' | 'level';
  /** Where half the contrast is left, in cycles a pixel along the edge's normal. */
  readonly mtf50: number;
  /** 95 %. */
  readonly interval: { readonly low: number; readonly high: number };
  /** From upright or level, clockwise as seen. */
  readonly angle: Degrees;
  /** How far sharpening drives the light past its level, as a share of the step; what noise alone may do is taken off. */
  readonly overshoot: number;
  /** Rows that were read. */
  readonly rows: number;
  /** Share of the strip's pixels that stand at black or at clipping. */
  readonly clipped: number;
}

export type EdgeFault =
  /** The place is not in the picture, or ends too near to its border. */
  | { readonly is: 'edge outside' }
  | { readonly is: 'edge too short'; readonly rows: number; readonly needed: number }
  /** It leans too little or too much for its rows to fall between the pixels. */
  | { readonly is: 'edge not slanted'; readonly angle: Degrees }
  /** No step from dark to light that stands out of the noise. */
  | { readonly is: 'no edge' }
  | { readonly is: 'edge not straight'; readonly scatter: number }
  | { readonly is: 'edge clipped'; readonly at: 'white' | 'black' }
  /** Something else stands so near, in pixels, that its light mixes with the edge's. */
  | { readonly is: 'two edges'; readonly apart: number }
  /** The blur runs past what can be looked at. */
  | { readonly is: 'edge too blurred' }
  | { readonly is: 'edge too sharp' };

/** Angles between which four phases fill well, in degrees (ISO 12233 asks for about 5; the bounds are common practice, no source). */
const LEAST_ANGLE = 2;
const MOST_ANGLE = 15;
/** Fewer rows leave a phase to chance. */
const LEAST_ROWS = 20;
/** Share of the rows that must lie on the line. */
const LEAST_KEPT = 0.7;
/** Farthest looked, in pixels; and nearest that tells anything. */
const FARTHEST = 64;
const NEAREST = 8;
/** Shares of the lobe: what is needed to tell all of the blur, the least, and where the window stays flat (7, 3.4 and 3.6 deviations of a Gaussian). */
const NEEDED_LOBES = 3.3;
const LEAST_LOBES = 1.6;
const FLAT_LOBES = 1.7;
/** What the method itself may be off, as a share: twice the deviation found on edges without noise. */
const OWN_ERROR = 0.005;
const SURE = 1.96;

/** `random` gives numbers from 0 to below 1; the interval rests on it, the figure does not. */
export function measureEdge(plane: Plane, place: EdgePlace, random: () => number): Answer<EdgeMeasure, EdgeFault> {
  const course = courseOf(place, plane);
  const length = course.end - course.first;
  if (!(length >= LEAST_ROWS)) return cannot({ is: 'edge too short', rows: Math.max(0, length || 0), needed: LEAST_ROWS });
  const most = Math.min(FARTHEST, Math.floor(length / 2));
  const room = roomBeside(plane, course, course.line);
  if (!(room >= NEAREST)) return cannot({ is: 'edge outside' });
  const rough = roughEdge(plane, course, Math.min(most, room));
  if (!rough.ok) return rough;
  const found = settleLine(plane, course, rough.value);
  if (found === null) return cannot({ is: 'no edge' });
  const { line, fit } = found;
  const tilt = fromRadians(Math.atan(line.lean));
  const angle = course.runs === 'upright' ? degrees(-tilt) : tilt;
  if (Math.abs(angle) < LEAST_ANGLE || Math.abs(angle) > MOST_ANGLE) return cannot({ is: 'edge not slanted', angle });
  const rows = wholeShifts(fit.kept, line.lean);
  const needed = Math.max(LEAST_ROWS, Math.ceil(1 / Math.abs(line.lean)));
  if (rows.length < needed) return cannot({ is: 'edge too short', rows: fit.kept.length, needed });

  const wide = Math.min(most, roomBeside(plane, course, line));
  if (wide < NEAREST) return cannot({ is: 'edge outside' });
  const whole = edgeSpread(cutStrip(plane, course, line, wide), rows);
  const extent = whole && edgeExtent(whole, wide);
  if (!extent) return cannot({ is: 'edge too blurred' });
  const { lobe, clear, beside } = extent;
  const reach = Math.floor(Math.min(clear, wide, Math.max(NEAREST, NEEDED_LOBES * lobe)));
  if (reach < LEAST_LOBES * lobe || reach < NEAREST / 2) return cannot(beside ? { is: 'two edges', apart: clear } : { is: 'edge too blurred' });
  if (fit.kept.length < LEAST_KEPT * length) return cannot({ is: 'no edge' });
  if (fit.scatter > 0.5 + 0.25 * lobe) return cannot({ is: 'edge not straight', scatter: fit.scatter });

  const strip = cutStrip(plane, course, line, reach);
  const spread = edgeSpread(strip, rows);
  if (spread === null) return cannot({ is: 'edge too short', rows: rows.length, needed });
  const shape = edgeShape(strip, spread, rows);
  if (shape.blown !== null) return cannot({ is: 'edge clipped', at: shape.blown });
  if (!shape.stands) return cannot({ is: 'no edge' });
  const window = edgeWindow(reach, Math.min(reach - 1, Math.max(reach / 2, FLAT_LOBES * lobe)));
  const mtf50 = halfContrast(edgeContrast(spread, window, line.lean));
  if (mtf50 === null) return cannot({ is: 'edge too sharp' });
  const deviation = relativeDeviation({ strip, rows, window, lean: line.lean, apart: spread.apart, half: mtf50 }, random);
  const factor = Math.exp(SURE * deviation + OWN_ERROR);
  return answered({
    runs: course.runs,
    mtf50,
    interval: { low: mtf50 / factor, high: mtf50 * factor },
    angle,
    overshoot: shape.overshoot,
    rows: rows.length,
    clipped: shape.clipped,
  });
}

/** The line, fitted in strips that follow it more and more closely. */
function settleLine(plane: Plane, course: EdgeCourse, { line: rough, reach }: RoughEdge): { readonly line: EdgeLine; readonly fit: EdgeFit } | null {
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
