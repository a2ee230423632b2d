// From linear colours to the bytes of a picture: the transfer curve of sRGB (IEC 61966-2-1:1999) and an unsharp mask of one pixel's
// radius on the encoded levels, as cameras sharpen (common practice, no source).
import type { Colours } from './mosaicSensor.ts';
import { gaussianBlur } from './smooth.ts';

export function developedBytes({ red, green, blue }: Colours, width: number, height: number, sharpening: number): Uint8ClampedArray {
  const rgba = new Uint8ClampedArray(4 * width * height);
  for (const [channel, light] of [red, green, blue].entries()) {
    const levels = new Float32Array(light.length);
    for (let index = 0; index < light.length; index += 1) levels[index] = CURVE[Math.round(Math.min(1, Math.max(0, light[index]!)) * (CURVE.length - 1))]!;
    const soft = sharpening > 0 ? gaussianBlur(levels, width, height, 1) : levels;
    for (let index = 0; index < levels.length; index += 1) {
      const level = levels[index]!;
      rgba[4 * index + channel] = Math.round(255 * (level + sharpening * (level - soft[index]!)));
    }
  }
  for (let index = 3; index < rgba.length; index += 4) rgba[index] = 255;
  return rgba;
}

const CURVE = Float32Array.from({ length: 16_385 }, (_, index) => {
  const linear = index / 16_384;
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
});
