// How deep each point of the ramp stands, as the camera saw it. A plane's two axes are as long and square to each other, and what a picture shows of
// them is their part across the line of sight; that leaves their part along it (two equations for two unknowns: after Z. Zhang, IEEE PAMI 22(11),
// 2000, 3.1). The ramp leans by far more than the camera does, so its shortening tells its whole lean to a small part of a degree; what of that
// is the camera's own tilt follows from the lean the ramp is mounted at. The zero line lies in the target's plane, below its middle.
import type { Point } from '../optics/print/drawing.ts';
import { RAMP_LEAN, RAMP_WIDTH } from '../optics/print/rampLayout.ts';
import { degrees, radians } from '../optics/quantity.ts';
import type { PrintFactor } from '../optics/print/printCheck.ts';
import type { RampOptics } from './defocusModel.ts';
import type { FoundRamp } from './findRamp.ts';
import type { FoundTarget } from './findTarget.ts';
import { inverse, through } from './homography.ts';
import type { PlaceOnRamp } from './rampEdges.ts';

export interface PrintedOptics extends RampOptics {
  /** Printed length over drawn length: what is found in a picture counts in drawn millimetres, and depth in true ones. */
  readonly printed: PrintFactor;
}

export interface RampPose {
  readonly place: PlaceOnRamp;
  /** Standard deviation of all depths together, in millimetres: by so much the ramp may stand before or behind where it is taken to stand. */
  readonly doubt: number;
}

/** How truly a ramp is mounted and its marks are found, as a standard deviation in degrees of its lean (common practice, no source). */
const LEAN_DOUBT = degrees(0.15);
/** How flat paper lies on its board, as a standard deviation in millimetres (common practice, no source). */
const FLATNESS = 0.5;

/** The optical axis is taken to meet the picture in its middle. Null where the ramp does not look like a leaning plane. */
export function rampPose(
  ramp: FoundRamp,
  target: FoundTarget,
  optics: PrintedOptics,
  picture: { readonly width: number; readonly height: number },
): RampPose | null {
  const { focalLength, distance, pitch, printed } = optics;
  const focal = (focalLength * distance) / (distance - focalLength) / pitch;
  const zero: Point = { x: RAMP_WIDTH / 2, y: ramp.layout.zero };
  const at = through(ramp.toPicture, zero);
  const ray: Point = { x: (at.x - picture.width / 2) / focal, y: (at.y - picture.height / 2) / focal };
  const axes = axesInDepth(slope(ramp, zero, { x: 1, y: 0 }, focal), slope(ramp, zero, { x: 0, y: 1 }, focal), ray);
  if (axes === null) return null;
  const { across, down } = axes;
  const below = through(inverse(target.toPicture), at);
  // The depths along the target's own three axes are the sides of a unit length; what the level one leaves, the other two share.
  const left = Math.sqrt(1 - across ** 2);
  const tilt = Math.asin(Math.min(1, -down / left)) - radians(RAMP_LEAN);
  const zeroDepth = across * below.x - left * Math.sin(tilt) * below.y;
  return {
    place: (point) => ({ ...through(ramp.toPicture, point), depth: printed * (zeroDepth + across * (point.x - zero.x) + down * (point.y - zero.y)) }),
    doubt: Math.hypot(printed * Math.hypot(below.x, below.y) * Math.sin(radians(LEAN_DOUBT)), FLATNESS),
  };
}

/** What a millimetre along one axis of the page makes in the picture, over the focal length. */
function slope({ toPicture }: FoundRamp, { x, y }: Point, axis: Point, focal: number): Point {
  const [one, other] = [through(toPicture, { x: x - axis.x, y: y - axis.y }), through(toPicture, { x: x + axis.x, y: y + axis.y })];
  return { x: (other.x - one.x) / 2 / focal, y: (other.y - one.y) / 2 / focal };
}

/** Depth gained along each axis by a millimetre on the page. The axis down the page comes nearer: that tells the two solutions apart. */
function axesInDepth(across: Point, down: Point, ray: Point): { across: number; down: number } | null {
  let [a, b] = [0, 0];
  for (let turn = 0; turn < 20; turn += 1) {
    // Off the optical axis, depth shifts what is seen along the ray.
    const [u, v] = [
      { x: across.x + ray.x * a, y: across.y + ray.y * a },
      { x: down.x + ray.x * b, y: down.y + ray.y * b },
    ];
    const shorter = u.x ** 2 + u.y ** 2 - v.x ** 2 - v.y ** 2;
    const skew = u.x * v.x + u.y * v.y;
    // b² - a² = shorter and a b = -skew
    const square = (shorter + Math.sqrt(shorter ** 2 + 4 * skew ** 2)) / 2;
    if (!(square > 0)) return null;
    b = -Math.sqrt(square);
    a = -skew / b;
  }
  const length = Math.hypot(across.x + ray.x * a, across.y + ray.y * a, a);
  return { across: a / length, down: b / length };
}
