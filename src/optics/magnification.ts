// How large the target appears on the sensor. A thin lens gives it from the focal length and the distance
// (S. F. Ray, Applied Photographic Optics, 3rd ed. 2002, ch. 4 and 22): m = f/(u - f) with u from the lens, and
// m + 1/m + 2 = D/f with D from the film plane. Lenses that focus inside shorten their focal length as they focus near,
// so the length of a known scale on the sensor is the better measure, and depth of field uses it when known.
import { millimetres, type Millimetres } from '../units.ts';
import { failed, type Result } from '../result.ts';
import type { BenchFault } from './fault.ts';
import { fits } from './fits.ts';
import type { MeasuredFrom } from './measuredFrom.ts';
import { Magnification } from './quantity.ts';

export interface MeasuredDistance {
  readonly from: MeasuredFrom;
  readonly distance: Millimetres;
}

/** The same distance from the film plane; `reach` runs from the film-plane mark to the lens's front rim. */
export const fromFilmPlane = (measured: MeasuredDistance, reach: Millimetres): Millimetres =>
  measured.from === 'film plane' ? measured.distance : millimetres(measured.distance + reach);

/** Thin lens. The front of the lens stands for the lens itself, which is right to a few centimetres. */
export function thinLensMagnification(focalLength: Millimetres, measured: MeasuredDistance): Result<Magnification, BenchFault> {
  const { distance, from } = measured;
  const least = from === 'film plane' ? 4 * focalLength : focalLength;
  if (distance < least || (from === 'front of lens' && distance === least)) return failed({ is: 'no focus so near', focalLength, distance, from });
  if (from === 'front of lens') return fits(Magnification, focalLength / (distance - focalLength));
  const half = distance / focalLength / 2 - 1;
  // The smaller root of m + 1/m = 2·half, in the form that loses no digits at long distances.
  return fits(Magnification, 1 / (half + Math.sqrt(Math.max(0, half * half - 1))));
}

/** The film-plane distance at which a thin lens gives this magnification. */
export const distanceFor = (focalLength: Millimetres, m: Magnification): Millimetres => millimetres(focalLength * (m + 1 / m + 2));

/** From the lens to the target: what perspective and the depth of field are reckoned from. */
export const lensToTarget = (focalLength: Millimetres, m: Magnification): Millimetres => millimetres(focalLength * (1 + 1 / m));

/** From a length on the target that spans so many pixels of a photograph at full size. */
export function measuredMagnification(length: Millimetres, pixels: number, pitch: Millimetres): Result<Magnification, BenchFault> {
  if (!(length > 0)) return failed({ is: 'no length on the target' });
  if (!(pixels >= 10)) return failed({ is: 'no pixels' });
  if (!(pitch > 0.0005 && pitch < 0.05)) return failed({ is: 'no pixel pitch' });
  return fits(Magnification, (pixels * pitch) / length);
}

/** The focal length the lens really has at this focus, seen through its magnification. */
export const shortenedFocalLength = ({ from, distance }: MeasuredDistance, m: Magnification): Millimetres =>
  millimetres(from === 'film plane' ? distance / (m + 1 / m + 2) : (distance * m) / (1 + m));
