// A small part of the picture at 100 %, for the eye: the light of the plane coded again as a screen takes it (IEC 61966-2-1:1999,
// 5.2). It is grey, as what was measured is.
import type { PixelSource } from './pixelSource.ts';
import { cutPlane } from './plane.ts';

/** Pixels as a canvas takes them: four bytes each, row by row. */
export interface Crop {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
}

const coded = (light: number): number => (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);

/** So many pixels each way, with this place of the picture in its middle; beyond the border, the nearest pixel is repeated. */
export function cropAround(picture: PixelSource, middle: { readonly x: number; readonly y: number }, size: number): Crop {
  const [left, top] = [Math.round(middle.x - size / 2), Math.round(middle.y - size / 2)];
  const plane = picture.around({ left, top, right: left + size, bottom: top + size });
  const part = cutPlane(plane, left, top, size, size);
  const rgba = new Uint8ClampedArray(4 * size * size);
  part.light.forEach((light, index) => rgba.set([255 * coded(light), 255 * coded(light), 255 * coded(light), 255], 4 * index));
  return { width: size, height: size, rgba };
}
