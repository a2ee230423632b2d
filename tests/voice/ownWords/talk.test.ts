// Contract of telling talk from the sounds beside a camera: what is long and rises and falls is talk, and nothing else.
import { describe, expect, test } from 'vitest';
import { Endpoints } from '../../../src/voice/ownWords/endpoints.ts';
import { Frames } from '../../../src/voice/ownWords/bands.ts';
import { MARGIN, type Stretch } from '../../../src/voice/ownWords/pieces.ts';
import { isSyllable, isTalk, isTone } from '../../../src/voice/ownWords/talk.ts';
import { beeps, cough, drive, key, shutter } from '../../bench/hearing/noises.ts';
import { inRoom, say, WORDS } from './spoken.ts';

const RATE = 16_000;
const stretchesOf = (sound: Float32Array) => {
  const endpoints = new Endpoints();
  const heard = inRoom([sound.map((value) => 0.1 * value)], RATE, 0.0005, 4);
  return new Frames(RATE).push(heard).flatMap((frame) => {
    const sounding = endpoints.push(frame);
    return sounding?.sign === 'ended' ? sounding.pieces.map(({ stretch }) => stretch) : [];
  });
};
const SEEDS = Array.from({ length: 20 }, (_, seed) => seed);

describe.each([
  ['mirror and shutter', shutter],
  ['a key', key],
  ['a cough', cough],
  ['beeps', beeps],
  ['the focus drive', drive],
] as const)('%s', (_, make) => {
  test('is no talk', () => {
    expect(SEEDS.filter((seed) => stretchesOf(make(RATE, seed)).some(isTalk))).toEqual([]);
  });
});

test('a beep is a tone, and a word is none', () => {
  expect(SEEDS.filter((seed) => !stretchesOf(beeps(RATE, seed)).every(isTone))).toEqual([]);
  expect(stretchesOf(say(WORDS['undo'] ?? [], RATE, 3, 1)).some(isTone)).toBe(false);
});

test('words run together are talk', () => {
  const talk = Object.values(WORDS).flatMap((sounds, seed) => [...say(sounds, RATE, seed, 1)]);
  expect(stretchesOf(Float32Array.from(talk)).some(isTalk)).toBe(true);
});

test('a word is at least a syllable; a click, a key and a beep are none', () => {
  for (const sounds of Object.values(WORDS)) expect(stretchesOf(say(sounds, RATE, 3, 1)).every(isSyllable)).toBe(true);
  for (const make of [shutter, key, beeps]) expect(SEEDS.filter((seed) => stretchesOf(make(RATE, seed)).some(isSyllable))).toEqual([]);
});

describe('by what is measured of it', () => {
  /** Quiet margins around frames of so many decibels, each shared out over the bands; there is no noise. */
  const stretch = (decibels: readonly number[], shares: readonly number[]): Stretch => {
    const margin = Array.from({ length: MARGIN }, () => Float32Array.from(shares, () => 0));
    const frames = [...margin, ...decibels.map((level) => Float32Array.from(shares, (share) => share * 10 ** (level / 10))), ...margin];
    return { frames, noise: Float32Array.from(shares, () => 0), begins: 0, ends: frames.length };
  };
  const even = Array.from({ length: 20 }, () => 0.05);

  test('a tone has more than nine tenths of its power in its two strongest bands', () => {
    expect([[0.46, 0.46, 0.08], [0.91, 0, 0.09], [0.08, 0.46, 0.46], [0.44, 0.44, 0.12], even].map((shares) => isTone(stretch([0, 0], shares)))).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
    const noisy = stretch([0], [0.5, 0.4, 0.1]);
    // Less one and a half times the noise: 0.47, 0.37 and 0.07 of 0.91.
    expect([isTone(noisy), isTone({ ...noisy, noise: Float32Array.of(0.02, 0.02, 0.02) })]).toEqual([false, true]);
  });

  /** Loudness that goes up and down by so many decibels, slowly beside the mean of three frames: it scatters by as much. */
  const waves = (height: number, length: number) => Array.from({ length }, (_, t) => (Math.floor(t / 12) % 2 === 0 ? height : -height));

  test('talk is 36 frames long or more, and scatters by 2.6 dB', () => {
    const talk = (height: number, length: number) => isTalk(stretch(waves(height, length), even));
    expect([talk(4, 35), talk(4, 36), talk(4, 48)]).toEqual([false, true, true]);
    // The mean of three rounds the steps off a little: four frames in 24 have a third of the height.
    expect([talk(2.6, 48), talk(3, 48)]).toEqual([false, true]);
    expect(isTalk(stretch(waves(4, 48), [0.5, 0.5]))).toBe(false);
  });

  test('a syllable is six loud frames long, scatters by 2.1 dB and has power up to 950 Hz', () => {
    const syllable = (height: number, length: number, shares = even) => isSyllable(stretch(waves(height, length), shares));
    expect([syllable(2, 24), syllable(2.6, 24)]).toEqual([false, true]);
    const rising = (length: number) =>
      isSyllable(
        stretch(
          Array.from({ length }, (_, t) => (9 * t) / (length - 1)),
          even,
        ),
      );
    expect([rising(5), rising(6)]).toEqual([false, true]);
    // The lowest eight bands of twenty.
    const voiced = (share: number) => syllable(3, 24, [...Array.from({ length: 8 }, () => share / 8), ...Array.from({ length: 12 }, () => (1 - share) / 12)]);
    expect([voiced(0.05), voiced(0.07)]).toEqual([false, true]);
  });
});
