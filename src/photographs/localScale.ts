// What a homography does near one point: how large, how turned, and how much narrower one way. Far from the lens the narrowing is
// the cosine of the tilt, which needs no focal length. Derivative of the homography; its singular values in closed form.
import type { Point } from '../optics/print/drawing.ts';
import type { Homography } from './homography.ts';

export interface LocalScale {
  /** Pixels to a millimetre: the root of how areas grow. */
  readonly scale: number;
  /** Of the print's rows, in radians from -π to π; positive is clockwise. */
  readonly turn: number;
  /** Degrees from 0 to 90, taken from the narrowing alone. */
  readonly tilt: number;
}

export function affineAt([a, b, c, d, e, f, g, h, i]: Homography, { x, y }: Point): LocalScale {
  const w = g * x + h * y + i;
  const [u, v] = [(a * x + b * y + c) / w, (d * x + e * y + f) / w];
  const [ux, uy, vx, vy] = [(a - g * u) / w, (b - h * u) / w, (d - g * v) / w, (e - h * v) / w];
  const [sum, difference] = [Math.hypot(ux + vy, vx - uy), Math.hypot(ux - vy, vx + uy)];
  const [long, short] = [(sum + difference) / 2, Math.abs(sum - difference) / 2];
  return { scale: Math.sqrt(long * short), turn: Math.atan2(vx, ux), tilt: (Math.acos(Math.min(1, short / long)) * 180) / Math.PI };
}
