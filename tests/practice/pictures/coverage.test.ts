// Contract of the coverage: the share of each pixel that a polygon covers, exactly, whichever way round its corners go.
import { expect, test } from 'vitest';
import { addPolygon, takeCoverage, type Grid } from '../../../src/practice/pictures/coverage.ts';

type Corner = readonly [x: number, y: number];

function covered(grid: Grid, ...polygons: readonly (readonly Corner[])[]): number[] {
  const sums = new Float32Array((grid.width + 1) * grid.height);
  for (const polygon of polygons) addPolygon(sums, grid, polygon.map(([x, y]) => ({ x, y }))); // prettier-ignore
  const pixels = Array.from({ length: grid.width * grid.height }, () => 0);
  takeCoverage(sums, grid, (pixel, coverage) => (pixels[pixel] = Math.round(1e4 * coverage) / 1e4));
  expect(sums.every((sum) => sum === 0)).toBe(true);
  return pixels;
}

const box = (left: number, top: number, right: number, bottom: number): Corner[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

test('a box covers a part of the pixels at its sides', () => {
  const wanted = [0.375, 0.75, 0.1875, 0, 0.25, 0.5, 0.125, 0];
  expect(covered({ width: 4, height: 2 }, box(0.5, 0.25, 2.25, 1.5))).toEqual(wanted);
  expect(covered({ width: 4, height: 2 }, box(0.5, 0.25, 2.25, 1.5).toReversed())).toEqual(wanted);
});

test('within one pixel it covers its area', () => {
  expect(covered({ width: 3, height: 3 }, box(1.25, 1.5, 1.75, 1.75))).toEqual([0, 0, 0, 0, 0.125, 0, 0, 0, 0]);
});

test('a slanted side gives each pixel the mean of what lies under it', () => {
  const falling: Corner[] = [[0, 0], [4, 0], [0, 1]]; // prettier-ignore
  const rising: Corner[] = [[0, 1], [4, 0], [4, 1]]; // prettier-ignore
  expect(covered({ width: 4, height: 1 }, falling)).toEqual([0.875, 0.625, 0.375, 0.125]);
  expect(covered({ width: 4, height: 1 }, rising)).toEqual([0.125, 0.375, 0.625, 0.875]);
  expect(covered({ width: 4, height: 1 }, falling, rising)).toEqual([1, 1, 1, 1]);
});

test('a side that begins and ends inside pixels', () => {
  // From (0.5, 0) to (2.5, 1): half a pixel each of height; the first pixel has 1/4 high by half a pixel under it, and so on.
  const polygon: Corner[] = [[0.5, 0], [2.5, 1], [0.5, 1]]; // prettier-ignore
  expect(covered({ width: 4, height: 1 }, polygon)).toEqual([0.4375, 0.5, 0.0625, 0]);
});

test('a side over several rows', () => {
  const polygon: Corner[] = [[0, 0], [2, 2], [0, 2]]; // prettier-ignore
  expect(covered({ width: 2, height: 2 }, polygon)).toEqual([0.5, 0, 1, 0.5]);
});

test('what lies outside is cut off, on every side', () => {
  expect(covered({ width: 2, height: 2 }, box(-3, -3, 1, 1))).toEqual([1, 0, 0, 0]);
  expect(covered({ width: 2, height: 2 }, box(1, 1, 9, 9))).toEqual([0, 0, 0, 1]);
  expect(covered({ width: 2, height: 2 }, box(-9, -9, 9, 9))).toEqual([1, 1, 1, 1]);
  expect(covered({ width: 2, height: 2 }, box(5, 0, 9, 2), box(-5, 0, -1, 2), box(0, -2, 2, 0), box(0, 2, 2, 5))).toEqual([0, 0, 0, 0]);
});

test('what is covered twice is covered once', () => {
  expect(covered({ width: 1, height: 1 }, box(0, 0, 1, 1), box(0, 0, 0.5, 1))).toEqual([1]);
});
