// The picture at half the size, again and again: marks are looked for where they are a few dozen pixels wide.
import type { Plane } from './plane.ts';

export interface PyramidLevel {
  readonly plane: Plane;
  /** Pixels of the picture to a pixel here. */
  readonly factor: number;
}

/** Longest side that is never halved further. */
const SMALLEST = 320;

/** The whole picture first, each next one half as large. */
export function levelsOf(plane: Plane): PyramidLevel[] {
  const levels: PyramidLevel[] = [{ plane, factor: 1 }];
  let now = plane;
  while (Math.max(now.width, now.height) > SMALLEST && Math.min(now.width, now.height) >= 2) {
    now = halve(now);
    levels.push({ plane: now, factor: 2 ** levels.length });
  }
  return levels;
}

/** Each pixel the mean of four; an odd row or column at the end is left out. */
function halve({ width, height: rows, light }: Plane): Plane {
  const height = Math.floor(rows / 2);
  const half = Math.floor(width / 2);
  const small = new Float32Array(half * height);
  for (let y = 0; y < height; y++) {
    const upper = 2 * y * width;
    const lower = upper + width;
    for (let x = 0; x < half; x++) {
      const at = 2 * x;
      small[y * half + x] = (light[upper + at]! + light[upper + at + 1]! + light[lower + at]! + light[lower + at + 1]!) / 4;
    }
  }
  return { width: half, height, light: small };
}
