// How far the target stands. Fifty focal lengths for general use and no fewer than twenty-five where the room is
// short are common practice, no source; a lens used mostly at one distance is measured there, a macro lens at its
// working magnification. Every distance here runs from the film plane: what was measured from the front of the lens
// is converted first.
import { millimetres, type Millimetres } from '../units.ts';
import { usualDistance } from '../kit/kit.ts';
import { failed, got, type Result } from '../result.ts';
import type { BenchFault } from './fault.ts';
import { distanceFor } from './magnification.ts';
import type { Magnification } from './quantity.ts';
import type { DistanceUnit } from './writtenLength.ts';

/** The lens as it stands in front of the body, a converter counted in. */
export interface StandingLens {
  readonly focalLength: Millimetres;
  /** As the maker gives it, from the film plane; null where it is not known. */
  readonly closestFocus: Millimetres | null;
}

export type DistanceWish =
  | { readonly wish: 'usual' }
  /** The longest distance the room allows. */
  | { readonly wish: 'room'; readonly longest: Millimetres }
  /** The distance the lens is really used at. */
  | { readonly wish: 'used'; readonly distance: Millimetres }
  | { readonly wish: 'macro'; readonly magnification: Magnification };

export interface BenchDistance {
  readonly distance: Millimetres;
  /** Distance over focal length. */
  readonly multiple: number;
  readonly stands: 'usual' | 'short' | 'near' | 'far' | 'at closest focus';
}

const USUAL = 50;
const SHORTEST = 25;

/** The range of practice: twenty-five to fifty focal lengths. */
export const usualRange = (focalLength: Millimetres): readonly [Millimetres, Millimetres] => [millimetres(focalLength * SHORTEST), usualDistance(focalLength)];

/** The distance for this wish, and what it is good for; refused below the closest focus. The unit is only for what is said. */
export function benchDistance(lens: StandingLens, wish: DistanceWish, unit: DistanceUnit): Result<BenchDistance, BenchFault> {
  const { focalLength, closestFocus } = lens;
  const wanted = wantedDistance(focalLength, wish);
  if (closestFocus !== null && wanted < closestFocus) {
    if (wish.wish === 'usual') return got(judged(focalLength, closestFocus, true));
    return failed({ is: 'nearer than its closest focus', wanted, closest: closestFocus, unit });
  }
  return got(judged(focalLength, wanted, closestFocus !== null && wanted <= closestFocus * 1.02));
}

function wantedDistance(focalLength: Millimetres, wish: DistanceWish): Millimetres {
  switch (wish.wish) {
    case 'usual':
      return usualDistance(focalLength);
    case 'room':
      return millimetres(Math.min(wish.longest, usualDistance(focalLength)));
    case 'used':
      return wish.distance;
    case 'macro':
      return distanceFor(focalLength, wish.magnification);
  }
}

function judged(focalLength: Millimetres, distance: Millimetres, closest: boolean): BenchDistance {
  const multiple = distance / focalLength;
  return { distance, multiple, stands: closest ? 'at closest focus' : standing(multiple) };
}

function standing(multiple: number): Exclude<BenchDistance['stands'], 'at closest focus'> {
  // A tape measure is read to a per cent; the bounds must not turn on less.
  if (multiple < SHORTEST * 0.99) return 'near';
  if (multiple < USUAL * 0.99) return 'short';
  return multiple <= USUAL * 1.01 ? 'usual' : 'far';
}
