// Squareness from the lengths of the target's four sides in live view. A side that stands nearer looks longer: for a
// flat rectangle of width w at distance u from the lens, tilted by θ about the upright axis, the left and right
// sides' lengths obey (left - right)/(left + right) = w·sin θ/(2u) (perspective; exact for a tilt about one axis, to
// second order about two). The lever is w/(2u), so a small far target shows little: the answer carries how far it can
// be trusted.
import { millimetres, type Millimetres } from '../units.ts';
import { failed, got, type Result } from '../result.ts';
import type { BenchFault } from './fault.ts';
import { degrees, fromRadians, radians, type Degrees } from './quantity.ts';

/** Lengths in live view, in pixels or millimetres of the screen: any unit, the same for all four. */
export interface FourSides {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The rectangle measured, and how far it stands from the lens. */
export interface MeasuredRectangle {
  readonly width: Millimetres;
  readonly height: Millimetres;
  readonly fromLens: Millimetres;
}

export interface Tilt {
  /** About the upright axis: positive, the left edge stands nearer. */
  readonly sideways: Degrees;
  /** About the level axis: positive, the top edge stands nearer. */
  readonly leaning: Degrees;
  /** Both together, as the angle between the target and square. */
  readonly whole: Degrees;
  /** One standard deviation of the larger of the two, for the measuring error given. */
  readonly uncertainty: Degrees;
}

/** Largest tilt believed: beyond it a side was mistyped or the target is not the one named. */
const MOST = 30;

/** `error`: one standard deviation of one length, as a share of it (0.005 for half a per cent). */
export function tiltFromSides(sides: FourSides, rectangle: MeasuredRectangle, error: number): Result<Tilt, BenchFault> {
  if (![sides.left, sides.right, sides.top, sides.bottom].every((length) => length > 0 && Number.isFinite(length))) {
    return failed({ is: 'no sides' });
  }
  const sideways = lever(sides.left, sides.right, rectangle.fromLens, rectangle.width);
  const leaning = lever(sides.top, sides.bottom, rectangle.fromLens, rectangle.height);
  if (Math.max(Math.abs(sideways), Math.abs(leaning)) > Math.sin((MOST * Math.PI) / 180)) return failed({ is: 'tilt too large', most: MOST });
  const arm = (2 * rectangle.fromLens) / Math.min(rectangle.width, rectangle.height);
  return got({
    sideways: fromRadians(Math.asin(sideways)),
    leaning: fromRadians(Math.asin(leaning)),
    whole: fromRadians(Math.asin(Math.min(1, Math.hypot(sideways, leaning)))),
    uncertainty: degrees(Math.min(90, fromRadians((arm * error) / Math.SQRT2))),
  });
}

const lever = (near: number, far: number, distance: Millimetres, size: Millimetres): number => ((2 * distance) / size) * ((near - far) / (near + far));

/** What the camera sees where the target stands, and how well a length is measured there. */
export interface Room {
  readonly fromLens: Millimetres;
  readonly seen: { readonly width: Millimetres; readonly height: Millimetres };
  readonly error: number;
}

/** The smaller side of a rectangle whose uncertainty is this angle: w = \u221a2\u00b7u\u00b7error/sin \u03b8. */
export const rectangleFor = (uncertainty: Degrees, { fromLens, error }: Room): Millimetres =>
  millimetres((Math.SQRT2 * fromLens * error) / Math.sin(radians(uncertainty)));

export type Edge = 'left' | 'right' | 'top' | 'bottom';

/** How to measure finer: marks so far apart both ways, any larger rectangle, or no rectangle of this picture. */
export type Finer = { readonly by: 'marks'; readonly apart: Millimetres } | { readonly by: 'a larger rectangle' } | { readonly by: 'the mirror alone' };

export type Squareness =
  | { readonly verdict: 'square' }
  /** These edges stand nearer and go back. */
  | { readonly verdict: 'turn'; readonly away: readonly Edge[] }
  | { readonly verdict: 'cannot tell'; readonly finer: Finer };

/** Against what is allowed: a tilt within twice its own uncertainty of the bound is not told apart from it. */
export function judgeTilt(tilt: Tilt, allowed: Degrees, room?: Room): Squareness {
  if (tilt.whole + 2 * tilt.uncertainty <= allowed) return { verdict: 'square' };
  if (tilt.whole - 2 * tilt.uncertainty > allowed) return { verdict: 'turn', away: nearerEdges(tilt) };
  return { verdict: 'cannot tell', finer: finer(allowed, room) };
}

function finer(allowed: Degrees, room: Room | undefined): Finer {
  if (room === undefined) return { by: 'a larger rectangle' };
  const apart = rectangleFor(degrees(allowed / 4), room);
  return apart <= Math.min(room.seen.width, room.seen.height) ? { by: 'marks', apart } : { by: 'the mirror alone' };
}

export const nearerEdges = ({ sideways, leaning }: Pick<Tilt, 'sideways' | 'leaning'>): readonly Edge[] => [
  ...(Math.abs(sideways) >= Math.abs(leaning) / 3 ? [sideways > 0 ? ('left' as const) : ('right' as const)] : []),
  ...(Math.abs(leaning) > Math.abs(sideways) / 3 ? [leaning > 0 ? ('top' as const) : ('bottom' as const)] : []),
];
