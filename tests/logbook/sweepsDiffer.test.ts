// Contract: two sweeps of one situation are named as differing only where chance hardly brings them so far apart. The Bayes
// factor is that of two normal densities, worked out here directly.
import { expect, test } from 'vitest';
import { compare, sweepsDiffer } from '../../src/logbook/combined.ts';

const at = (value: number, variance = 0.25) => ({ value, variance });
const density = (x: number, variance: number) => Math.exp(-(x ** 2) / 2 / variance) / Math.sqrt(2 * Math.PI * variance);

test.each([
  [0, 0],
  [0, 1],
  [2, 6.5],
  [-3, 4],
])('the odds of %d and %d are the densities of their difference with and without a change', (one, other) => {
  const apart = other - one;
  expect(Math.log(compare(at(one), at(other)).bayesFactor)).toBeCloseTo(Math.log(density(apart, 0.5 + 9) / density(apart, 0.5)), 9);
});

test('the last two sweeps count, and only a difference beyond both intervals with strong evidence is named', () => {
  expect(sweepsDiffer([at(0)])).toBeNull();
  expect(sweepsDiffer([at(0), at(1)])).toBeNull();
  expect(sweepsDiffer([at(8), at(0), at(0.5)])).toBeNull();
  expect(sweepsDiffer([at(0), at(4)])).toMatchObject({ trouble: 'sweeps differ', apart: 4, differ: true });
});

test('just outside 95 % is said to differ, but is no trouble yet', () => {
  const close = compare(at(0), at(1.45));
  expect(close.differ).toBe(true);
  expect(sweepsDiffer([at(0), at(1.45)])).toBeNull();
});
