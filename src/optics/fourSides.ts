// Squareness from the lengths of the target's four sides in live view. A side that stands nearer looks longer: for a
// flat rectangle of width w at distance u from the lens, tilted by θ about the upright axis, the left and right
// sides' lengths obey (left - right)/(left + right) = w·sin θ/(2u) (perspective; exact for a tilt about one axis, to
// second order about two). The lever is w/(2u), so a small far target shows little: the answer carries how far it can
// be trusted.
import { millimetres, type Millimetres } from '../units.ts';
import { failed, got, type Result } from '../result.ts';
import { degrees, fromRadians, radians, writeNumber, type Degrees } from './quantity.ts';

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
export function tiltFromSides(sides: FourSides, rectangle: MeasuredRectangle, error: number): Result<Tilt> {
  if (![sides.left, sides.right, sides.top, sides.bottom].every((length) => length > 0 && Number.isFinite(length))) {
    return failed('Enter all four sides as they measure in live view, each above zero.');
  }
  const sideways = lever(sides.left, sides.right, rectangle.fromLens, rectangle.width);
  const leaning = lever(sides.top, sides.bottom, rectangle.fromLens, rectangle.height);
  if (Math.max(Math.abs(sideways), Math.abs(leaning)) > Math.sin((MOST * Math.PI) / 180)) {
    return failed(
      `That would be a tilt of more than ${MOST}\u00b0: measure the sides again, and check the target\u2019s size` +
        ' and distance.',
    );
  }
  const arm = (2 * rectangle.fromLens) / Math.min(rectangle.width, rectangle.height);
  return got({
    sideways: fromRadians(Math.asin(sideways)),
    leaning: fromRadians(Math.asin(leaning)),
    whole: fromRadians(Math.asin(Math.min(1, Math.hypot(sideways, leaning)))),
    uncertainty: degrees(Math.min(90, fromRadians((arm * error) / Math.SQRT2))),
  });
}

const lever = (near: number, far: number, distance: Millimetres, size: Millimetres): number =>
  ((2 * distance) / size) * ((near - far) / (near + far));

export type Squareness = 'square' | 'turn' | 'cannot tell';

/** What the camera sees where the target stands, and how well a length is measured there. */
export interface Room {
  readonly fromLens: Millimetres;
  readonly seen: { readonly width: Millimetres; readonly height: Millimetres };
  readonly error: number;
}

/** The smaller side of a rectangle whose uncertainty is this angle: w = \u221a2\u00b7u\u00b7error/sin \u03b8. */
export const rectangleFor = (uncertainty: Degrees, { fromLens, error }: Room): Millimetres =>
  millimetres((Math.SQRT2 * fromLens * error) / Math.sin(radians(uncertainty)));

/** Against what is allowed: a tilt within twice its own uncertainty of the bound is not told apart from it. */
export function judgeTilt(tilt: Tilt, allowed: Degrees, room?: Room): { readonly verdict: Squareness; readonly say: string } {
  const figure = `Tilted ${writeNumber(tilt.whole, 1)}\u00b0, give or take ${writeNumber(2 * tilt.uncertainty, 1)}\u00b0`;
  if (tilt.whole + 2 * tilt.uncertainty <= allowed) return { verdict: 'square', say: `${figure}: square enough.` };
  if (tilt.whole - 2 * tilt.uncertainty > allowed) return { verdict: 'turn', say: `${figure}: ${whichWay(tilt)}.` };
  return {
    verdict: 'cannot tell',
    say:
      `${figure}: too rough to tell ${writeNumber(allowed, 1)}\u00b0; ${finer(allowed, room)}`,
  };
}

/** How to measure finer: a rectangle as large as it takes, if the picture holds it. */
function finer(allowed: Degrees, room: Room | undefined): string {
  if (room === undefined) return 'measure a larger rectangle, or use the mirror.';
  const least = rectangleFor(degrees(allowed / 4), room);
  if (least <= Math.min(room.seen.width, room.seen.height)) {
    return `measure marks on the board at least ${writeNumber(least, 0)} mm apart both ways, or use the mirror.`;
  }
  return 'no rectangle in this picture is large enough for lengths read to half a per cent, so use the mirror.';
}

/** Which edge to move: the one that stands nearer goes back. */
export function whichWay({ sideways, leaning }: Tilt): string {
  const turns: string[] = [];
  if (Math.abs(sideways) >= Math.abs(leaning) / 3) turns.push(sideways > 0 ? 'left' : 'right');
  if (Math.abs(leaning) > Math.abs(sideways) / 3) turns.push(leaning > 0 ? 'top' : 'bottom');
  return (
    `turn the target so that its ${turns.join(' and its ')} edge${turns.length > 1 ? 's go' : ' goes'} away from ` +
    'the camera'
  );
}
