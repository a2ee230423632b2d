// Contract of the distance to a word: the mean of the nearest three takes whole, and row by row the nearest two, the worst stretch told.
import { expect, test } from 'vitest';
import type { Cepstra } from '../../../src/voice/ownWords/cepstra.ts';
import { sceneOf, speechOf, type SpeechAlone } from '../../../src/voice/ownWords/inNoise.ts';
import { distanceTo, mean } from '../../../src/voice/ownWords/wordDistance.ts';

const ROWS = 20;
const frames = Array.from({ length: ROWS }, () => Float32Array.of(10));
const scene = sceneOf(frames, Float32Array.of(0.001));
const take = (): SpeechAlone => speechOf(frames, Float32Array.of(0.001));

/** A measure that makes the heard sound rise by 100 a row, so that rows lie on their like, and each take that and what it is told, in turn. */
function told(...away: readonly (readonly number[])[]) {
  let turn = -1;
  return (): Cepstra => {
    const rows = Array.from({ length: ROWS }, (_, row) => 100 * row + (away[turn]?.[row] ?? 0));
    turn += 1;
    return { values: Float32Array.from(rows), length: ROWS, width: 1 };
  };
}
const steady = (value: number, rows = ROWS): number[] => Array.from({ length: rows }, () => value);

test('whole, the three nearest of all takes count; row by row the two nearest', () => {
  const found = distanceTo('undo', [take(), take(), take(), take()], scene, told(steady(9), steady(1), steady(4), steady(2)));
  expect(found).toMatchObject({ word: 'undo', closest: 1.5, worst: 1.5 });
  expect(found.apart).toBeCloseTo((1 + 2 + 4) / 3, 6);
});

test('the worst 16 rows are told: where the take is off by 8 in eight of them, half of that', () => {
  const found = distanceTo('undo', [take()], scene, told([...steady(0, 6), ...steady(8, 8), ...steady(0, 6)]));
  expect(found.worst).toBe(4);
  expect(found.closest).toBeCloseTo((8 * 8) / 20, 6);
});

test('what is far off at the end alone is told by the last 16 rows, and at the beginning by the first', () => {
  expect(distanceTo('undo', [take()], scene, told([...steady(0, 10), ...steady(8, 4), ...steady(0, 2), ...steady(8, 4)])).worst).toBe(4);
  expect(distanceTo('undo', [take()], scene, told([...steady(8, 4), ...steady(0, 2), ...steady(8, 4), ...steady(0, 10)])).worst).toBe(4);
});

test('how long it carries sound is told against the takes', () => {
  expect(distanceTo('undo', [take(), take()], scene, told(steady(1), steady(1))).carrying).toBe(1);
  const half = speechOf([...frames.slice(0, 10), ...frames.slice(0, 10).map(() => Float32Array.of(0.001))], Float32Array.of(0.001));
  expect(distanceTo('undo', [half], scene, told(steady(1))).carrying).toBe(2);
});

test('a mean is that, and of nothing none', () => {
  expect(mean([1, 2, 6])).toBe(3);
  expect(mean([])).toBe(0);
});
