// Pixels of a PNG that this project made, and a PNG of pixels that a test worked out.
import { PNG } from 'pngjs';

export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly hasAlpha: boolean;
  /** Red, green, blue and alpha of a pixel, 0 to 255. */
  readonly at: (x: number, y: number) => readonly number[];
}

export function pngPixels(file: Uint8Array): Pixels {
  const { width, height, alpha, data } = PNG.sync.read(Buffer.from(file));
  return { width, height, hasAlpha: alpha, at: (x, y) => [...data.subarray(4 * (y * width + x), 4 * (y * width + x + 1))] };
}

/** Quickly written rather than small. */
export function pngFile({ width, height, rgba }: { readonly width: number; readonly height: number; readonly rgba: Uint8ClampedArray }): Buffer {
  const png = new PNG({ width, height });
  png.data.set(rgba);
  return PNG.sync.write(png, { deflateLevel: 1, filterType: 0 });
}
