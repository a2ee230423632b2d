// Contract of talk, at its limits: how long, how uneven, in how many bands. Frames are made by hand, without noise.
import { describe, expect, test } from 'vitest';
import type { Stretch } from '../../../src/voice/ownWords/pieces.ts';
import { isSyllable, isTalk, isTone } from '../../../src/voice/ownWords/talk.ts';

const run = (count: number, value: number): number[] => Array.from({ length: count }, () => value);
/** Powers in decibels, a frame each, spread over so many bands. */
const stretch = (decibels: readonly number[], bands: readonly number[] = run(10, 1), noise = run(bands.length, 0)): Stretch => ({
  frames: decibels.map((level) => Float32Array.from(bands, (share) => share * 10 ** (level / 10))),
  noise: Float32Array.from(noise),
  begins: 0,
  ends: decibels.length,
});
/** Ten loud and ten soft by turns; smoothed over three frames, they scatter by a little less than half of what they differ. */
const uneven = (frames: number, by: number): number[] => Array.from({ length: frames }, (_, t) => (Math.floor(t / 10) % 2 === 0 ? 0 : -by));

describe('talk', () => {
  test('lasts 36 frames beside the margins', () => {
    expect([isTalk(stretch(uneven(59, 8))), isTalk(stretch(uneven(60, 8)))]).toEqual([false, true]);
  });

  test('scatters by 2.6 decibels', () => {
    expect([isTalk(stretch(uneven(80, 5))), isTalk(stretch(uneven(80, 6)))]).toEqual([false, true]);
  });

  test('is followed only between the first and the last moment within 10 dB of the loudest', () => {
    const around = (level: number) => [...run(20, level), ...run(40, 0), ...run(20, level)];
    expect([isTalk(stretch(around(-11))), isTalk(stretch(around(-9)))]).toEqual([false, true]);
  });

  test('has pauses that count for no more than 20 dB', () => {
    // One frame in eighty, smoothed over three, at 100 dB below: 3 of 20 squared in 80 is 3.9; were they counted whole it would be more than 6.
    expect(isTalk(stretch([...run(39, 0), -100, ...run(40, 0)]))).toBe(true);
    expect(isTalk(stretch([...run(99, 0), -100, ...run(100, 0)]))).toBe(false);
  });

  test('is no tone', () => {
    expect(isTalk(stretch(uneven(80, 8), [20, 1, 1]))).toBe(false);
  });
});

test('a tone has more than nine tenths of its power in two bands, whichever they are, over half again the noise', () => {
  const tone = (bands: readonly number[], noise?: readonly number[]) => isTone(stretch(run(30, 0), bands, noise && [...noise]));
  expect([tone([5, 4, 1]), tone([5, 4.1, 0.9]), tone([0.5, 9, 0.4]), tone([0.9, 4, 5.1])]).toEqual([false, true, true, true]);
  expect(tone([5, 4, 1], [0, 0, 0.1])).toBe(true);
  expect(tone([6.5, 4, 1], [1, 0, 0])).toBe(false);
});

describe('a syllable', () => {
  const inside = (levels: readonly number[]): number[] => [...run(12, -40), ...levels, ...run(12, -40)];
  const rising = (frames: number): number[] => Array.from({ length: frames }, (_, t) => -9.9 * Math.abs((2 * t) / (frames - 1) - 1));

  test('has six frames within 10 dB of the loudest', () => {
    expect([isSyllable(stretch(inside(rising(5)))), isSyllable(stretch(inside(rising(6))))]).toEqual([false, true]);
    expect(isSyllable(stretch(inside([...rising(5), ...run(9, -11)])))).toBe(false);
  });

  test('rises and falls by 2.1 decibels', () => {
    const by = (level: number) => isSyllable(stretch(inside([...run(10, -level), ...run(10, 0)])));
    expect([by(4), by(5)]).toEqual([false, true]);
  });

  test('has six hundredths of its power where a voice has it', () => {
    const voiced = (share: number) => isSyllable(stretch(inside(rising(20)), [...run(7, 0), share, ...run(5, (1 - share) / 5)]));
    expect([voiced(0.059), voiced(0.061)]).toEqual([false, true]);
    expect(isSyllable(stretch(inside(rising(20)), [...run(8, 0), 0.1, ...run(5, 0.18)]))).toBe(false);
  });

  test('is no tone', () => {
    expect(isSyllable(stretch(inside(rising(20)), [20, 1, 1]))).toBe(false);
  });
});
