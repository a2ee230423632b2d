// Contract of the pieces of a sound: a word is cut free of a click before it, closed mouths inside a word are bridged.
import { expect, test } from 'vitest';
import { MARGIN, piecesOf } from '../../../src/voice/ownWords/pieces.ts';

const FROM = 1000;
/** `loud`: the power of each frame over the noise. */
const cut = (loud: readonly number[]) =>
  piecesOf({ frames: loud.map((power) => Float32Array.of(power + 1e-4)), noise: Float32Array.of(1e-4), loud, from: FROM }, 0, loud.length);
const run = (power: number, frames: number): number[] => Array.from({ length: frames }, () => power);
/** A sound that rings on by so many decibels a frame. */
const fall = (power: number, frames: number, decibels: number): number[] => Array.from({ length: frames }, (_, t) => power * 10 ** ((-decibels * t) / 10));
const word = [...run(0.3, 10), ...run(1, 20), ...run(0.2, 10)];
const quiet = (frames: number): number[] => run(1e-6, frames);

test('a word alone is one piece, with a margin on both sides', () => {
  const found = cut([...quiet(20), ...word, ...quiet(20)]);
  expect(found?.pieces).toEqual([found?.loudest]);
  expect(found?.loudest.stretch).toMatchObject({ begins: FROM + 20 - MARGIN, ends: FROM + 20 + word.length + MARGIN });
});

test('a word after a louder sound is a piece of its own, in order', () => {
  const found = cut([...quiet(5), ...run(8, 10), ...quiet(25), ...word, ...quiet(15)]);
  expect(found?.pieces.map(({ stretch }) => stretch.begins)).toEqual([FROM, FROM + 40 - MARGIN]);
  expect(found?.loudest).toBe(found?.pieces[0]);
});

test('a mouth closed inside a word does not cut it', () => {
  const found = cut([...quiet(5), ...run(1, 15), ...quiet(8), ...run(0.5, 12), ...quiet(5)]);
  expect(found?.pieces).toHaveLength(1);
  expect(found?.loudest.later).toBeNull();
});

test('after a longer pause the rest can be had without what is before it', () => {
  const found = cut([...quiet(5), ...run(1, 12), ...quiet(14), ...run(0.5, 20), ...quiet(5)]);
  expect(found?.pieces).toHaveLength(1);
  expect(found?.loudest.later?.stretch.begins).toBe(FROM + 5 + 12 + 14 - MARGIN);
  expect(found?.loudest.later?.before.begins).toBe(FROM);
});

test('what only rings on is no piece', () => {
  expect(cut([...quiet(5), ...word, ...fall(0.2, 60, 0.7)])?.pieces).toHaveLength(1);
});

test('what is too short for a word is none', () => {
  expect(cut([...quiet(10), ...run(1, 4), ...quiet(10)])).toBeNull();
});
