import { expect, test } from 'vitest';
import { cropAround } from '../../src/photographs/crop.ts';
import { wholePicture } from '../../src/photographs/pixelSource.ts';

test('a crop has the place in its middle, the border repeated, and light coded as a screen takes it', () => {
  const picture = wholePicture({ width: 4, height: 3, light: Float32Array.from({ length: 12 }, (_, at) => at / 12) });
  const code = (light: number): number => Math.round(255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055));
  const crop = cropAround(picture, { x: 2.4, y: 1.2 }, 2);
  expect(crop).toMatchObject({ width: 2, height: 2 });
  expect([...crop.rgba]).toEqual([1, 2, 5, 6].flatMap((at) => [code(at / 12), code(at / 12), code(at / 12), 255]));
  const corner = cropAround(picture, { x: 0, y: 0 }, 2);
  expect([...corner.rgba].filter((_, at) => at % 4 === 0)).toEqual([0, 0, 0, 0]);
  const dim = wholePicture({ width: 1, height: 1, light: Float32Array.of(0.003) });
  expect(cropAround(dim, { x: 0.5, y: 0.5 }, 1).rgba[0]).toBe(10);
});
