// The thin lens: how large things come out, and how far a point out of focus spreads. Focused at z0 from the lens, a point at z
// makes a disc of diameter f²/(N(z0 - f)) · |z - z0|/z on the sensor (S. F. Ray, Applied Photographic Optics, 3rd ed. 2002, ch. 22).
import type { LensInUse } from './shot.ts';

const focusedAt = ({ distance, focusError }: LensInUse): number => distance + focusError;

/** From the lens to the sensor. */
export function imageDistance(lens: LensInUse): number {
  const z0 = focusedAt(lens);
  return (lens.focalLength * z0) / (z0 - lens.focalLength);
}

/** Diameter on the sensor of the disc that a point at this distance from the lens makes. */
export function discAt(lens: LensInUse, z: number): number {
  const z0 = focusedAt(lens);
  return ((lens.focalLength ** 2 / (lens.aperture * (z0 - lens.focalLength))) * Math.abs(z - z0)) / z;
}

/** Wavelength that the eye sees best. */
const GREEN = 0.00055;

/** Standard deviation on the sensor of the Gaussian that fits the Airy disc best, 0.42 λN (B. Zhang, J. Zerubia, J.-C. Olivo-Marin, Applied Optics 46(10), 2007, from memory). */
export const diffraction = ({ aperture }: LensInUse): number => 0.42 * GREEN * aperture;
