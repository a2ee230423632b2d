// Contract of the shape of a sound: its loudness and its form over time, the mean taken away, and how they change. By hand on one band,
// whose cosines are 1, 0, -1, 0 and so on, times the root of 2.
import { expect, test } from 'vitest';
import { shapeOf } from '../../../src/voice/ownWords/cepstra.ts';

const rising = (frames: number) => Array.from({ length: frames }, (_, t) => Float32Array.of(Math.exp(t)));
const at = (shape: ReturnType<typeof shapeOf>, row: number, column: number): number => shape.values[row * shape.width + column] ?? NaN;

test('a steady sound has no shape', () => {
  const shape = shapeOf([1, 2, 3].map(() => Float32Array.of(5, 6, 7)));
  expect(shape).toMatchObject({ length: 3, width: 22 });
  for (const value of shape.values) expect(value).toBeCloseTo(0, 5);
});

test('loudness counts 0.7, the third number by the lifter of its place', () => {
  const shape = shapeOf(rising(3));
  for (const [row, away] of [-1, 0, 1].entries()) {
    expect(at(shape, row, 0)).toBeCloseTo(0.7 * Math.SQRT2 * away, 5);
    expect(at(shape, row, 1)).toBeCloseTo(0, 5);
    // (1 + 4 sin(2 pi / 22)) / 3 = 0.708977
    expect(at(shape, row, 2)).toBeCloseTo(-Math.SQRT2 * 0.708977 * away, 4);
  }
});

test('a slope is that of the straight line through seven rows, times 2.1; where rows are missing the last stands for them', () => {
  const shape = shapeOf(rising(9));
  const step = 0.7 * Math.SQRT2;
  // At the first row 1, 2 and 3 times 1, 2 and 3 steps, of 28: a half.
  expect(at(shape, 0, 11)).toBeCloseTo(2.1 * 0.5 * step, 4);
  expect(at(shape, 4, 11)).toBeCloseTo(2.1 * step, 4);
  expect(at(shape, 8, 11)).toBeCloseTo(2.1 * 0.5 * step, 4);
  expect(at(shapeOf(rising(2)), 0, 11)).toBeCloseTo((2.1 * 6 * step) / 28, 4);
});

test('bands count by the cosine of their place: two that move against each other leave the loudness', () => {
  const shape = shapeOf([Float32Array.of(Math.E, 1), Float32Array.of(1, Math.E)]);
  expect(at(shape, 0, 0)).toBeCloseTo(0, 5);
  // cos(pi / 4) = 0.707107, the root of 2 / 2 is 1; (1 + 4 sin(pi / 22)) / 3 = 0.523087.
  expect(at(shape, 0, 1)).toBeCloseTo(Math.SQRT1_2 * 0.523087, 4);
});
