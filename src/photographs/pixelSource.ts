// A picture as the measurements ask for it: reduced, to find prints in, and its own pixels only where something is measured. A browser
// reduces a picture quickly, and hands its pixels out slowly.
import type { Point } from '../optics/print/drawing.ts';
import type { Plane } from './plane.ts';
import { halve } from './shrink.ts';

export interface PixelSource {
  /** In pixels, at least one each way. */
  readonly width: number;
  readonly height: number;
  /** All of it, so many times smaller: a power of two. Each pixel is the mean of a square of its own; an odd row or column at the end is left out. */
  readonly reduced: (factor: number) => Plane;
  /** A plane as large as the picture, with the picture's own pixels in this box at least; what it holds elsewhere is not said. */
  readonly around: (box: PixelBox) => Plane;
}

/** In pixels; it may reach beyond the picture. */
export interface PixelBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Around these points, with so many pixels to spare. At least one point. */
export function boxOf(points: readonly Point[], spare: number): PixelBox {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs) - spare, top: Math.min(...ys) - spare, right: Math.max(...xs) + spare, bottom: Math.max(...ys) + spare };
}

/** Of a plane that is there as a whole. */
export function wholePicture(plane: Plane): PixelSource {
  const known: Plane[] = [plane];
  const level = (halvings: number): Plane => (known[halvings] ??= halve(level(halvings - 1)));
  return { width: plane.width, height: plane.height, reduced: (factor) => level(Math.round(Math.log2(factor))), around: () => plane };
}
