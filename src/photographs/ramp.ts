// Where focus fell, from one picture of the ramp: blur is read along its edges, and the focused plane is where it is least. Front and
// behind are told as data; what the picture does not carry is a fault.
import { failed, got, type Result } from '../result.ts';
import { growthOf, type RampOptics } from './defocusModel.ts';
import { readAlong, type FollowedEdge, type RampReading } from './followedEdge.ts';
import { medianOf } from './median.ts';
import type { Plane } from './plane.ts';
import { fitRamp } from './rampFit.ts';

export interface RampMeasure {
  /** Millimetres along the axis from the target to the focused plane, with the 95 % interval; positive is behind the target. */
  readonly error: number;
  readonly interval: { readonly low: number; readonly high: number };
  /** Told only where the interval leaves the target out. */
  readonly lies: 'in front' | 'behind' | 'on the target';
  /** Standard deviation of the blur in the focused plane, in pixels. */
  readonly leastBlur: number;
  /** Growth of the blur with depth over what focal length, aperture and distance let expect; about 1. */
  readonly growth: number;
  /** Every reading, to be drawn. */
  readonly readings: readonly { readonly depth: number; readonly spread: number }[];
}

export type RampFault =
  | { readonly is: 'ramp hidden'; /** Share of its edges that could be read. */ readonly seen: number }
  | { readonly is: 'ramp blown out' }
  /** Focus lies beyond the ramp's end, or so near it that it cannot be told. */
  | { readonly is: 'focus off the ramp'; readonly lies: 'in front' | 'behind' }
  /** The depth of field reaches further than the ramp. */
  | { readonly is: 'ramp too flat' }
  /** Edges that run one way are blurred, the others less: the camera moved across them. */
  | { readonly is: 'camera moved'; readonly blurs: 'upright' | 'level' };

/** Fewer of the pieces read: something stands before it, or it is cut off. */
const LEAST_SEEN = 0.5;
const LEAST_READINGS = 12;
/** The blur of one direction over the other's that a lens and a mosaic do not make (common practice, no source), and how large it must be to matter, in pixels. */
const MOVED = 1.7;
const MOVED_LEAST = 1;

/** Depth is reckoned as the found edges say; the optics tell how fast blur should grow. */
export function measureRamp(plane: Plane, edges: readonly FollowedEdge[], optics: RampOptics): Result<RampMeasure, RampFault> {
  const pieces = edges.flatMap((edge) => readAlong(plane, edge, optics.distance));
  const read = pieces.filter((piece) => piece !== null);
  const readings = withoutFaint(read);
  const seen = pieces.length === 0 ? 0 : readings.length / pieces.length;
  const depths = edges.flatMap(({ depthFrom, depthTo }) => [depthFrom, depthTo]);
  const [nearest, farthest] = [Math.min(...depths), Math.max(...depths)];
  if (readings.length < LEAST_READINGS || coveredShare(readings, nearest, farthest) < LEAST_SEEN) return failed({ is: 'ramp hidden', seen });
  if (medianOf(readings.map(({ blown }) => blown)) > 0.25) return failed({ is: 'ramp blown out' });
  const reach = farthest - nearest;
  const fit = fitRamp(readings, {
    distance: optics.distance,
    growth: growthOf(optics),
    from: Math.max(nearest - reach, -0.9 * optics.distance),
    to: farthest + reach,
  });
  if (fit === null) return failed({ is: 'ramp too flat' });
  const { upright, level } = fit.least;
  if (upright !== null && level !== null) {
    const [more, less] = [Math.max(upright, level), Math.max(0.05, Math.min(upright, level))];
    if (more > MOVED_LEAST ** 2 && more > MOVED ** 2 * less) return failed({ is: 'camera moved', blurs: upright > level ? 'upright' : 'level' });
  }
  if (fit.low > farthest || fit.high < nearest) return failed({ is: 'focus off the ramp', lies: fit.low > farthest ? 'behind' : 'in front' });
  if (fit.high - fit.low > 1.5 * reach) return failed({ is: 'ramp too flat' });
  if (fit.focus < nearest || fit.focus > farthest) return failed({ is: 'focus off the ramp', lies: fit.focus > farthest ? 'behind' : 'in front' });
  return got({
    error: fit.focus,
    interval: { low: fit.low, high: fit.high },
    lies: fit.low > 0 ? 'behind' : fit.high < 0 ? 'in front' : 'on the target',
    leastBlur: Math.sqrt(Math.max(0, Math.min(upright ?? Infinity, level ?? Infinity))),
    growth: fit.growth,
    readings: readings.map(({ depth, spread }) => ({ depth, spread })),
  });
}

/** Something with far less contrast than the rest is not the print's edge. */
function withoutFaint(readings: readonly RampReading[]): RampReading[] {
  if (readings.length === 0) return [];
  const usual = medianOf(readings.map(({ contrast }) => contrast));
  return readings.filter(({ contrast }) => contrast > 0.4 * usual);
}

/** Share of a dozen parts of the depth in which something was read. */
function coveredShare(readings: readonly RampReading[], from: number, to: number): number {
  const parts = 12;
  const read = new Set(readings.map(({ depth }) => Math.min(parts - 1, Math.max(0, Math.floor(((depth - from) / (to - from)) * parts)))));
  return read.size / parts;
}
