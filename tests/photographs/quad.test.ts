// Contract of the quadrangle of a spot: its corners the way a clock's hands go, and none where the spot is no parallelogram or not filled.
import { expect, test } from 'vitest';
import { areaOf, quadOf, sidesOfQuad } from '../../src/photographs/quad.ts';
import type { Point } from '../../src/optics/print/drawing.ts';

const points = (...at: readonly (readonly [number, number])[]): Point[] => at.map(([x, y]) => ({ x, y }));
const box = (wide: number, high: number): Point[] => points([0, 0], [wide, 0], [0, high], [wide, high], [wide / 2, high / 2]);
const about = (corners: readonly Point[]) => corners.map(({ x, y }) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) }));

test('a box is its four corners, clockwise', () => {
  expect(quadOf({ area: 100, outline: box(10, 10) })).toEqual(about(points([0, 0], [10, 0], [10, 10], [0, 10])));
  // Leaning: the two that are farthest apart begin it.
  expect(quadOf({ area: 100, outline: points([2, 0], [12, 2], [10, 12], [0, 10]) })).toEqual(about(points([0, 10], [2, 0], [12, 2], [10, 12])));
});

test('a spot fills 0.62 of its hull at least', () => {
  expect(quadOf({ area: 61, outline: box(10, 10) })).toBeNull();
  expect(quadOf({ area: 62, outline: box(10, 10) })).not.toBeNull();
});

test('three corners are none', () => {
  expect(quadOf({ area: 50, outline: points([0, 0], [10, 0], [0, 10], [3, 3]) })).toBeNull();
});

test('sides that face each other are alike to three quarters, neighbours to 0.45', () => {
  const narrowing = (top: number) => quadOf({ area: 80, outline: points([0, 10], [10, 10], [5 - top / 2, 0], [5 + top / 2, 0]) });
  expect(narrowing(7.4)).toBeNull();
  expect(narrowing(7.6)).not.toBeNull();
  const leaning = (right: number) => quadOf({ area: 80, outline: points([0, 0], [0, 10], [10, 5 - right / 2], [10, 5 + right / 2]) });
  expect(leaning(7.4)).toBeNull();
  expect(leaning(7.6)).not.toBeNull();
  expect([4.4, 4.6].map((high) => quadOf({ area: 10 * high, outline: box(10, high) }) === null)).toEqual([true, false]);
  expect([4.4, 4.6].map((wide) => quadOf({ area: 10 * wide, outline: box(wide, 10) }) === null)).toEqual([true, false]);
});

test('rounded corners are made sharp, with the same area about the same middle; what is rounder is no mark', () => {
  const cut = (by: number) => points([by, 0], [10 - by, 0], [10, by], [10, 10 - by], [10 - by, 10], [by, 10], [0, 10 - by], [0, by]);
  const quad = quadOf({ area: 98, outline: cut(1) });
  expect(Math.abs(areaOf(quad ?? []))).toBeCloseTo(98, 6);
  // The corners (0, 1), (9, 0), (10, 9) and (1, 10) hold 82: each goes out by the root of 98 / 82.
  const out = Math.sqrt(98 / 82);
  expect(quad).toEqual(about(points([5 - 5 * out, 5 - 4 * out], [5 + 4 * out, 5 - 5 * out], [5 + 5 * out, 5 + 4 * out], [5 - 4 * out, 5 + 5 * out])));
  expect(quadOf({ area: 96, outline: cut(1.5) })).toBeNull();
});

test('sides run from each corner to the next, and an area has the sign of its way round', () => {
  expect(sidesOfQuad([{ x: 0, y: 0 }, { x: 3, y: 4 }, { x: 3, y: 10 }, { x: 0, y: 10 }])).toEqual([5, 6, 3, 10]); // prettier-ignore
  expect(areaOf(points([0, 0], [4, 0], [4, 3]))).toBe(6);
  expect(areaOf(points([4, 3], [4, 0], [0, 0]))).toBe(-6);
});
