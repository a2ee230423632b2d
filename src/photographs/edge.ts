// How sharp one slanted edge is, in the form of ISO 12233:2017, annex D: a strip along the edge, the line through its rows, the
// spread at four bins a pixel, and the frequency at which half the contrast is left. What cannot be told is a fault, never a guess: each bound
// says what it is.
import type { Degrees } from '../optics/quantity.ts';
import { failed, got, type Result } from '../result.ts';
import { edgeExtent } from './edgeExtent.ts';
import { edgeShape } from './edgeShape.ts';
import { edgeSpread } from './edgeSpread.ts';
import { cutStrip, type EdgePlace } from './edgeStrip.ts';
import { edgeContrast } from './edgeTransfer.ts';
import { edgeWindow } from './edgeWindow.ts';
import { halfContrast } from './halfContrast.ts';
import type { Plane } from './plane.ts';
import { relativeDeviation } from './rowBootstrap.ts';
import { NEAREST, settleEdge, type SettledEdge, type SettleFault } from './settledEdge.ts';

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

/** Of 'two edges', `apart` is how near the other stands, in pixels: its light mixes with the edge's. Of 'no edge', no step stands out of the noise. */
export type EdgeFault =
  | SettleFault
  | { readonly is: 'edge not straight'; readonly scatter: number }
  | { readonly is: 'edge clipped'; readonly at: 'white' | 'black' }
  /** The blur runs past what can be looked at. */
  | { readonly is: 'edge too blurred' }
  | { readonly is: 'edge too sharp' };

/** Shares of the lobe: what is needed to tell all of the blur, the least, and where the window stays flat (7, 3.4 and 3.6 deviations of a Gaussian). */
const NEEDED_LOBES = 3.3;
const LEAST_LOBES = 1.6;
const FLAT_LOBES = 1.7;
/** What the method itself may be off, as a share: twice the deviation found on edges without noise. */
const OWN_ERROR = 0.005;
const SURE = 1.96;

/** Rows may scatter by as much, in pixels, and by as much of the lobe, since a blurred edge is placed less well. */
const SCATTER = { pixels: 0.5, lobes: 0.25 };

/** `random` gives numbers from 0 to below 1; the interval rests on it, the figure does not. */
export function measureEdge(plane: Plane, place: EdgePlace, random: () => number): Result<EdgeMeasure, EdgeFault> {
  const settled = settleEdge(plane, place);
  if (!settled.ok) return settled;
  const { course, line, angle, rows, scatter } = settled.value;
  const held = reachOf(plane, settled.value);
  if (!held.ok) return held;
  const { reach, lobe } = held.value;
  if (scatter > SCATTER.pixels + SCATTER.lobes * lobe) return failed({ is: 'edge not straight', scatter });

  const strip = cutStrip(plane, course, line, reach);
  const spread = edgeSpread(strip, rows);
  if (spread === null) return failed({ is: 'edge not slanted', angle });
  const { blown, stands, overshoot, clipped } = edgeShape(strip, spread, rows);
  if (blown !== null) return failed({ is: 'edge clipped', at: blown });
  if (!stands) return failed({ is: 'no edge' });
  const window = edgeWindow(reach, Math.min(reach - 1, Math.max(reach / 2, FLAT_LOBES * lobe)));
  const mtf50 = halfContrast(edgeContrast(spread, window, line.lean));
  if (mtf50 === null) return failed({ is: 'edge too sharp' });
  const deviation = relativeDeviation({ strip, rows, window, lean: line.lean, apart: spread.apart, half: mtf50 }, random);
  const factor = Math.exp(SURE * deviation + OWN_ERROR);
  return got({ runs: course.runs, mtf50, interval: { low: mtf50 / factor, high: mtf50 * factor }, angle, overshoot, rows: rows.length, clipped });
}

/** How far the strip goes to either side: over all of the blur, and nothing else. In whole pixels. */
function reachOf(plane: Plane, { course, line, rows, room }: SettledEdge): Result<{ readonly reach: number; readonly lobe: number }, EdgeFault> {
  const whole = edgeSpread(cutStrip(plane, course, line, room), rows);
  const extent = whole && edgeExtent(whole, room);
  if (!extent) return failed({ is: 'edge too blurred' });
  const { lobe, clear, beside } = extent;
  const reach = Math.floor(Math.min(clear, room, Math.max(NEAREST, NEEDED_LOBES * lobe)));
  if (reach >= LEAST_LOBES * lobe && reach >= NEAREST / 2) return got({ reach, lobe });
  return failed(beside ? { is: 'two edges', apart: clear } : { is: 'edge too blurred' });
}
