// How blur grows with depth, by the thin lens: focused at depth d0 behind a target at s from the lens, a point at depth d makes a disc of
// f²/(N(s - f)) · |d - d0|/(s + d) on the sensor (S. F. Ray, Applied Photographic Optics, 3rd ed. 2002, ch. 22). A disc of diameter c
// spreads a line by c/4, added in square to what is blurred everywhere: diffraction, the pixel, the lens, and sharpening.
import type { Millimetres } from '../units.ts';
import type { FNumber } from '../optics/quantity.ts';

export interface RampOptics {
  readonly focalLength: Millimetres;
  readonly aperture: FNumber;
  /** From the lens to the target. */
  readonly distance: Millimetres;
  readonly pitch: Millimetres;
}

/** Variance of the blur in square pixels that one unit of (|d - d0|/(s + d))² adds. */
export function growthOf({ focalLength, aperture, distance, pitch }: RampOptics): number {
  const disc = focalLength ** 2 / (aperture * (distance - focalLength)) / pitch;
  return disc ** 2 / 16;
}

/** (d - d0)/(s + d), squared. */
export const defocusSquare = (depth: number, focus: number, distance: number): number => ((depth - focus) / (distance + depth)) ** 2;

/**
 * A disc is no normal curve: one that is fitted to an edge blurred by a disc and by a normal curve of these variances takes the disc for
 * so many times what it is (fitted to a table reckoned numerically for this file, to 1 %).
 */
export const discSwell = (disc: number, rest: number): number => 1 + (0.28 * disc) / (disc + 1.6 * Math.max(rest, 0.05));
