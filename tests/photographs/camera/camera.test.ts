import { describe, expect, test } from 'vitest';
import { millimetres } from '../../../src/units.ts';
import { rectangle, type Drawing } from '../../../src/optics/print/drawing.ts';
import { addPolygon, takeCoverage } from '../../../src/practice/pictures/coverage.ts';
import { mountTarget, project } from '../../../src/practice/pictures/mounted.ts';
import { photograph, type KeptShot } from './photograph.ts';
import { discAt } from '../../../src/practice/pictures/thinLens.ts';
import { USUAL_SHOT } from './usualShot.ts';

/** The left half black, on a sheet that fills the picture. */
const HALVES: Drawing = { width: millimetres(200), height: millimetres(200), shapes: [rectangle(0, 0, 100, 200)] };
const QUIET: KeptShot = {
  ...USUAL_SHOT,
  sensor: { ...USUAL_SHOT.sensor, width: 200, height: 100, fullWell: 1e12, readNoise: 0 },
  development: { exposure: 0.9, sharpening: 0, jpeg: null },
};

const linear = (byte: number): number => {
  const level = byte / 255;
  return level <= 0.04045 ? level / 12.92 : ((level + 0.055) / 1.055) ** 2.4;
};
/** Variance in pixels of the line that the middle row's edge is the sum of. */
function spread(shot: KeptShot): number {
  const { rgba, width } = photograph([mountTarget(HALVES)], shot, 1);
  const row = Array.from({ length: width }, (_, x) => linear(rgba[4 * (50 * width + x) + 1]!));
  const slopes = row.slice(1).map((light, x) => light - row[x]!);
  const total = slopes.reduce((sum, slope) => sum + slope, 0);
  const mean = slopes.reduce((sum, slope, x) => sum + slope * x, 0) / total;
  return slopes.reduce((sum, slope, x) => sum + slope * (x - mean) ** 2, 0) / total;
}

describe('the tests’ own camera', () => {
  test('a polygon covers as much of the pixels as its area, and half of one it halves', () => {
    const grid = { width: 5, height: 4 };
    const sums = new Float32Array(6 * 4);
    addPolygon(sums, grid, [
      { x: 0.5, y: 0.25 },
      { x: 4.3, y: 1.1 },
      { x: 2.2, y: 3.9 },
    ]);
    let area = 0;
    takeCoverage(sums, grid, (_, coverage) => {
      area += coverage;
    });
    // The shoelace formula: half of |(3.8)(3.65) - (1.7)(0.85)|.
    expect(area).toBeCloseTo((3.8 * 3.65 - 1.7 * 0.85) / 2, 4);
  });

  test('the disc of a point out of focus is that of the thin lens: 85 mm, f/1.8, focused at 2 m, 100 mm behind', () => {
    // 85² / (1.8 · 1915) · 100 / 2100, worked by hand.
    expect(discAt(USUAL_SHOT.lens, 2100)).toBeCloseTo(0.09981, 4);
  });

  test('a defocused edge spreads by a quarter of its disc’s radius squared more than a sharp one', () => {
    const sharp = spread(QUIET);
    const focusError = 40;
    const disc = discAt({ ...QUIET.lens, focusError }, QUIET.lens.distance) / QUIET.sensor.pitch;
    // A disc of diameter c has a variance of c²/16 across any line.
    const more = spread({ ...QUIET, lens: { ...QUIET.lens, focusError } }) - sharp;
    // Eight bits cut the tails of the line short.
    expect(Math.abs(more / (disc ** 2 / 16) - 1)).toBeLessThan(0.03);
    expect(disc).toBeGreaterThan(5);
  });

  test('the middle of a square target lies in the middle of the picture, and a length on it is as long as the lens makes it', () => {
    const { projections } = photograph([mountTarget(HALVES)], QUIET, 1);
    const [middle, right] = [100, 110].map((x) => project(projections[0]!, x, 100));
    expect([middle!.x, middle!.y]).toEqual([100, 50]);
    // m = f / (s - f)
    expect(right!.x - middle!.x).toBeCloseTo(((85 / 1915) * 10) / 0.006, 6);
  });

  test('the same seed gives the same picture, another one other noise', () => {
    const noisy: KeptShot = { ...QUIET, sensor: { ...QUIET.sensor, fullWell: 4000, readNoise: 8 }, development: { exposure: 0.9, sharpening: 0.5, jpeg: 85 } };
    const [one, same, other] = [7, 7, 8].map((seed) => photograph([mountTarget(HALVES)], noisy, seed).rgba);
    expect(one).toEqual(same);
    expect(one).not.toEqual(other);
  });
});
