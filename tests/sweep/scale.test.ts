import { expect, test } from 'vitest';
import * as v from 'valibot';
import { halfRange, isOnScale, nearestOn, nearestWithin, neighbour, USUAL_SCALE, valuesOf, writeSteps } from '../../src/sweep/scale.ts';
import { Scale } from '../../src/sweep/storedScale.ts';
import { steps } from '../../src/units.ts';

const coarse: Scale = { min: steps(-10), max: steps(20), step: 5 };

test('the usual scale runs from -20 to +20 in 41 values (common practice, no source)', () => {
  expect(valuesOf(USUAL_SCALE)).toHaveLength(41);
  expect(valuesOf(USUAL_SCALE).at(0)).toBe(-20);
  expect(valuesOf(USUAL_SCALE).at(-1)).toBe(20);
});

test('a coarse scale has only its own values', () => {
  expect(valuesOf(coarse)).toEqual([-10, -5, 0, 5, 10, 15, 20]);
  expect(isOnScale(coarse, 7)).toBe(false);
  expect(isOnScale(coarse, 25)).toBe(false);
  expect(isOnScale(coarse, 15)).toBe(true);
});

test('any number has a nearest value, and beyond a limit it is the limit', () => {
  expect(nearestOn(coarse, 7.6)).toBe(10);
  expect(nearestOn(coarse, -99)).toBe(-10);
});

test('both limits are on the scale, and half a step beyond them still means them', () => {
  expect([-15, -10, 20, 25].map((value) => isOnScale(coarse, value))).toEqual([false, true, true, false]);
  expect([-12.6, -12.5, 22.5, 22.6].map((value) => nearestWithin(coarse, value))).toEqual([null, -10, 20, null]);
  expect([nearestOn(coarse, 99), nearestOn(coarse, 7.4)]).toEqual([20, 5]);
  expect(neighbour(coarse, steps(-5), -1)).toBe(-10);
  expect(neighbour(coarse, steps(-10), -1)).toBeNull();
  expect([halfRange(coarse), halfRange(USUAL_SCALE)]).toEqual([3, 20]);
});

test('a limit has no neighbour beyond it', () => {
  expect(neighbour(USUAL_SCALE, steps(20), 1)).toBeNull();
  expect(neighbour(coarse, steps(15), 1)).toBe(20);
});

test('corrections are written with their sign and a true minus', () => {
  expect([7, -12, 0].map(writeSteps)).toEqual(['+7', '\u221212', '0']);
});

test.each([
  { min: 0, max: 1, step: 1 },
  { min: -10, max: 10, step: 3 },
  { min: 5, max: -5, step: 1 },
  { min: -10, max: 10, step: 0 },
])('a scale that cannot be stepped through is refused: %o', (scale) => {
  expect(v.is(Scale, scale)).toBe(false);
});
