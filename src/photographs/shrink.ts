// The picture at half the size, again and again: marks are looked for where they are a few dozen pixels wide.
import type { Plane } from './plane.ts';

/** Each pixel the mean of four; an odd row or column at the end is left out. */
export function halve({ width, height: rows, light }: Plane): Plane {
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
