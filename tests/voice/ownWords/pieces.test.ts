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

test('a word has nine frames at least', () => {
  expect(cut([...quiet(10), ...run(1, 8), ...quiet(10)])).toBeNull();
  expect(cut([...quiet(10), ...run(1, 9), ...quiet(10)])?.loudest.stretch).toMatchObject({ begins: FROM, ends: FROM + 29 });
});

test('190 frames with the margins are no longer than a word, 191 are', () => {
  expect(cut([...quiet(20), ...run(1, 166), ...quiet(20)])?.loudest.long).toBe(false);
  expect(cut([...quiet(20), ...run(1, 167), ...quiet(20)])?.loudest.long).toBe(true);
});

test('17 quiet frames are bridged, 18 are not', () => {
  const found = (between: number) => cut([...quiet(20), ...run(1, 15), ...quiet(between), ...run(0.5, 12), ...quiet(20)])?.pieces;
  expect(found(17)?.map(({ stretch }) => [stretch.begins, stretch.ends])).toEqual([[FROM + 8, FROM + 20 + 15 + 17 + 12 + MARGIN]]);
  expect(found(18)?.map(({ stretch }) => stretch.begins)).toEqual([FROM + 8, FROM + 20 + 15 + 18 - MARGIN]);
});

test('what is more than 0.003 of the peak belongs to the word', () => {
  const ends = (power: number) => cut([...quiet(20), ...run(1000, 10), ...run(power, 10), ...quiet(30)])?.loudest.stretch.ends;
  expect(ends(3)).toBe(FROM + 30 + MARGIN);
  expect(ends(4)).toBe(FROM + 40 + MARGIN);
});

test('a fainter sound is a piece where it rises to ten times what lies between, on either side', () => {
  const word1000 = run(1000, 10);
  const after = (power: number) => cut([...quiet(5), ...word1000, ...run(2, 25), ...run(power, 12), ...quiet(5)])?.pieces.length;
  const before = (power: number) => cut([...quiet(5), ...run(power, 12), ...run(2, 25), ...word1000, ...quiet(5)])?.pieces.length;
  expect([after(19), after(20)]).toEqual([1, 2]);
  expect([before(19), before(20)]).toEqual([1, 2]);
});

test('a pause is ten frames of the smoothed loudness, that is twelve quiet ones; behind it another word must follow', () => {
  const later = (pause: number, behind: number) => cut([...quiet(5), ...run(1, 12), ...quiet(pause), ...run(0.5, behind), ...quiet(5)])?.loudest.later;
  expect(later(11, 20)).toBeNull();
  expect(later(12, 20)).toMatchObject({
    stretch: { begins: FROM + 29 - MARGIN, ends: FROM + 29 + 20 + 5 },
    before: { begins: FROM, ends: FROM + 18 + MARGIN },
  });
  expect(later(12, 8)).toBeNull();
  expect(later(12, 9)?.stretch.begins).toBe(FROM + 29 - MARGIN);
});

test('a pause is only what lies ten times under both what was and what comes', () => {
  const later = (pause: number, behind: number) => cut([...run(20, 12), ...run(pause, 14), ...run(behind, 12), ...quiet(5)])?.loudest.later;
  expect(later(1.9, 20)).not.toBeNull();
  expect(later(2, 20)).toBeNull();
  expect(later(1.9, 18)).toBeNull();
});

test('a piece of nine frames beside another is told, and one of eight is none', () => {
  // What lies under 0.003 of the peak is not the first one's; what lies over 0.003 of its own is the second one's.
  const beside = (frames: number) => cut([...quiet(5), ...run(1e6, 15), 10, ...run(10, 3), ...run(2500, frames - 3)])?.pieces;
  expect(beside(9)?.map(({ stretch }) => stretch.begins)).toEqual([FROM, FROM + 5 + 15 + 1 - MARGIN]);
  expect(beside(8)).toHaveLength(1);
});

test('one quiet moment right before a sound is enough for it to rise', () => {
  const found = (quietest: number) => cut([...quiet(5), ...run(1e6, 15), ...run(2900, 20), ...run(quietest, 3), 25_000, ...run(quietest, 2), ...run(2900, 10)])?.pieces; // prettier-ignore
  expect([found(0)?.length, found(900)?.length]).toEqual([2, 1]);
});

test('the last frame counts for what comes after a pause', () => {
  const later = (last: number) => cut([...run(20, 12), ...run(1, 14), ...run(6, 11), last])?.loudest.later;
  // On the mean of three, where nothing follows it: 9 and 12 for 15, so that ten times the pause lies between; 7.7 and 9.3 for 11.
  expect(later(15)).not.toBeNull();
  expect(later(11)).toBeNull();
});
