// Contract of the practice camera exactly at its limits: a share of one in ten is drawn below 0.1 and not at it, a distance that ends the
// late lights shows a flicker.
import { expect, test } from 'vitest';
import { halfPress, type PracticeCamera } from '../../src/practice/camera.ts';

/** No wavering: the band is 2 to 8, late up to 1 outside it, dark from 3. */
const CAMERA: PracticeCamera = { low: 2, high: 8, softLow: 0, softHigh: 0, lateUpTo: 1, darkFrom: 3, lapses: 0.3, arrows: 'right-is-up' };
/** Two numbers a normal draw; 0.25 gives a quarter of a turn, whose cosine is 0. */
const STILL = [0.5, 0.25, 0.5, 0.25];

function pressed(value: number, ...chance: readonly number[]) {
  const numbers = [...STILL, ...chance];
  let at = 0;
  return halfPress(CAMERA, value, () => numbers[at++] ?? 0.5);
}

test('a hold is spoilt below the share of lapses, and not at it', () => {
  expect([pressed(5, 0.3).light, pressed(5, 0.2999, 0.1, 0.5, 0.25).light]).toEqual(['steady', 'late']);
});

test('a spoilt hold comes out steady below one in ten, and not at it', () => {
  expect([pressed(-9, 0.1, 0.0999).light, pressed(-9, 0.1, 0.1, 0.5, 0.25).light]).toEqual(['steady', 'dark']);
});

test('a failed hold shows any light below one in ten, and its own at it', () => {
  expect([pressed(-9, 0.5, 0.5, 0.25, 0.0999, 0).light, pressed(-9, 0.5, 0.5, 0.25, 0.1, 0).light]).toEqual(['late', 'dark']);
  expect([0, 0.34, 0.67].map((which) => pressed(-9, 0.5, 0.5, 0.25, 0, which).light)).toEqual(['late', 'flicker', 'dark']);
});

test('a light is late nearer than its limit and flickers at it, flickers nearer than the next and is dark at that', () => {
  expect([1.01, 1, -0.99, -1].map((value) => pressed(value, 0.5, 0.5, 0.25, 0.5).light)).toEqual(['late', 'flicker', 'flicker', 'dark']);
});

test('an arrow is right below 95 in 100, and not at it; at the very middle the band is not above', () => {
  expect([0.9499, 0.95].map((chance) => pressed(0, 0.5, 0.5, 0.25, 0.5, chance).arrows)).toEqual(['right', 'left']);
  expect(pressed(5, 0.1, 0.5, 0.5, 0.25, 0.5, 0.5).arrows).toBe('left');
});
