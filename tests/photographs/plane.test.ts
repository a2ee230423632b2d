import { describe, expect, it } from 'vitest';
import { cutPlane, planeOf } from '../../src/photographs/plane.ts';

const pixels = (...colours: readonly (readonly number[])[]): Uint8ClampedArray => Uint8ClampedArray.from(colours.flatMap((colour) => [...colour, 255]));

describe('the plane of a picture', () => {
  it('runs from 0 at black to 1 at clipping', () => {
    const { light } = planeOf(pixels([0, 0, 0], [255, 255, 255]), 2, 1);
    expect(light[0]).toBe(0);
    expect(light[1]).toBeCloseTo(1, 6);
  });

  it('inverts the curve of sRGB: code 118 is 18 % of the light, code 10 lies on the straight part', () => {
    // 118: 1.055 · 0.18^(1/2.4) − 0.055 = 0.4614, × 255 = 117.6 (IEC 61966-2-1:1999, computed from its equation).
    const { light } = planeOf(pixels([118, 118, 118], [10, 10, 10]), 2, 1);
    expect(light[0]).toBeCloseTo(0.181, 3);
    expect(light[1]).toBeCloseTo(10 / 255 / 12.92, 7);
  });

  it('weighs the three colours as the eye does', () => {
    // ITU-R BT.709-6, 3.2.
    const { light } = planeOf(pixels([255, 0, 0], [0, 255, 0], [0, 0, 255]), 3, 1);
    expect([...light].map((one) => Number(one.toFixed(4)))).toEqual([0.2126, 0.7152, 0.0722]);
  });
});

describe('a part of a plane', () => {
  const whole = { width: 3, height: 2, light: Float32Array.of(1, 2, 3, 4, 5, 6) };

  it('holds the pixels from its corner on', () => {
    expect(cutPlane(whole, 1, 0, 2, 2)).toEqual({ width: 2, height: 2, light: Float32Array.of(2, 3, 5, 6) });
  });

  it('repeats the nearest pixel beyond the border, and keeps its places', () => {
    expect(cutPlane(whole, -1, 1, 5, 2).light).toEqual(Float32Array.of(4, 4, 5, 6, 6, 4, 4, 5, 6, 6));
  });
});
