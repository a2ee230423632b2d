// Squareness by a small mirror flat on the target. The lens sees itself along the mirror's normal, so a tilt of θ
// puts its reflection θ (not 2θ) off the middle: f·tan θ on the sensor. A spot of light sent from the camera comes
// back at twice the angle: d·tan 2θ beside where it left (law of reflection).
import { millimetres, type Millimetres } from '../units.ts';
import { failed, got, type Result } from '../result.ts';
import type { BenchFault } from './fault.ts';
import { fromRadians, radians, type Degrees } from './quantity.ts';

/** How far from the middle of the picture the lens sees itself. */
export const mirrorOffset = (focalLength: Millimetres, tilt: Degrees): Millimetres => millimetres(focalLength * Math.tan(radians(tilt)));

/** The tilt from that offset on the sensor. */
export function tiltFromMirror(focalLength: Millimetres, offset: Millimetres): Result<Degrees, BenchFault> {
  const tilt = fromRadians(Math.atan(Math.abs(offset) / focalLength));
  if (tilt <= 45) return got(tilt);
  return failed({ is: 'offset beyond the picture' });
}

/** How far beside its source a spot of light comes back. */
export const spotOffset = (distance: Millimetres, tilt: Degrees): Millimetres => millimetres(distance * Math.tan(2 * radians(tilt)));

/** The tilt from how far beside its source a spot of light comes back; `distance` from the source to the mirror. */
export function tiltFromSpot(distance: Millimetres, offset: Millimetres): Result<Degrees, BenchFault> {
  if (offset >= 0 && offset <= distance) return got(fromRadians(Math.atan(offset / distance) / 2));
  return failed({ is: 'no spot' });
}

/** On the sensor, from pixels in the picture. */
export const pixelsOnSensor = (pixels: number, pitch: Millimetres): Millimetres => millimetres(pixels * pitch);
