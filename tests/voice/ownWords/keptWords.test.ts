// The numbers of comparing with taught words, kept to seven digits: how like, how usual, how sure, and what is wrong with a take.
import { expect, test } from 'vitest';
import { seededRandom } from '../../../src/practice/random.ts';
import { nearestOf } from '../../../src/voice/ownWords/likeness.ts';
import { clearnessOf } from '../../../src/voice/ownWords/noiseMeter.ts';
import { recogniserOf } from '../../../src/voice/ownWords/recogniser.ts';
import { TakeRecording } from '../../../src/voice/ownWords/recordTake.ts';
import { sureness } from '../../../src/voice/ownWords/sureness.ts';
import { soundOf, takeOf, type Take } from '../../../src/voice/ownWords/take.ts';
import { clearanceOf, takeFaultOf } from '../../../src/voice/ownWords/takeQuality.ts';
import { usualOf } from '../../../src/voice/ownWords/usual.ts';
import type { WordDistance } from '../../../src/voice/ownWords/wordDistance.ts';
import { kept } from '../../kept/kept.ts';
import { summed } from '../../kept/summed.ts';
import { framesBy, loudnessBy, runs } from './keptStuff.ts';

const distanceBy = (random: () => number, word: string): WordDistance => ({
  word,
  apart: 0.5 + 3 * random(),
  warped: random(),
  closest: 0.5 + 2 * random(),
  worst: 0.5 + 4 * random(),
  carrying: 0.3 + random(),
});

test('what is usual, how like the nearest word is, and how sure that makes', () => {
  const told = (seed: number) => {
    const random = seededRandom(seed);
    const words = ['a', 'b', 'c', 'd'].slice(0, seed % 5);
    const again = new Map(words.map((word, at) => [word, Array.from({ length: (at + seed) % 4 }, () => distanceBy(random, word))]));
    const usual = usualOf(again, new Map(words.map((word, at) => [word, Array.from({ length: 1 + at }, () => 20 + Math.floor(60 * random()))])));
    const nearest = nearestOf(words.map((word) => distanceBy(random, word)), usual, 20 + Math.floor(60 * random())); // prettier-ignore
    const parts = [...usual.values()].map((one) => Object.values(one));
    return nearest === null ? parts : [...parts, nearest.words.map(({ word }) => word).join(''), Object.values(nearest.likeness), sureness(nearest.likeness)];
  };
  expect(kept(() => Array.from({ length: 24 }, (_, seed) => told(seed)))).toMatchSnapshot();
});

/** Sound that is a little other with each seed: a burst of three parts whose bands differ from word to word. */
function takeBy(word: number, seed: number, bands: number, learned = false): Take {
  const noise = new Float32Array(bands).fill(1e-6);
  const loud = runs([1e-6, 12], [0.02, 9 + (seed % 3)], [0.3, 12 + word], [0.01, 8 + (seed % 2)], [1e-6, 12]);
  const frames = framesBy(seed, loud, bands).map((frame, t) => frame.map((power, b) => power * (1 + Math.cos((b * (word + 1)) / 4 + t / 20))));
  return { ...takeOf(`word ${word}`, { frames, noise }), ...(learned ? { learned } : {}) };
}

test('what a recogniser says of sounds that are taught or not', () => {
  const sets: (readonly [takes: readonly Take[], rate: number])[] = [
    [[], 16_000],
    [[takeBy(0, 1, 8)], 16_000],
    [[takeBy(0, 1, 8), takeBy(0, 2, 8), takeBy(1, 3, 8), takeBy(1, 4, 8), takeBy(1, 5, 8)], 16_000],
    [[takeBy(0, 1, 9), takeBy(0, 2, 12), takeBy(1, 3, 10), takeBy(2, 4, 9), takeBy(2, 5, 9, true), takeBy(2, 6, 9, true)], 16_000],
    [[takeBy(0, 1, 9, true), takeBy(0, 2, 12), takeBy(0, 8, 12), takeBy(1, 3, 10)], 1600],
  ];
  const told = () =>
    sets.map(([takes, rate]) => {
      const recogniser = recogniserOf(takes, rate);
      const heard = [0, 1, 2, 5].map((word) => {
        const found = recogniser.recognise(soundOf(takeBy(word, 40 + word, 14)));
        if (found === null) return 'none';
        const words = found.words.map(({ word: name, ...parts }) => [name, ...Object.values(parts)].map((part) => (typeof part === 'number' ? part.toPrecision(7) : part)).join(' ')); // prettier-ignore
        return [words, Object.values(found.evidence), [found.sureness, found.clearance]];
      });
      return [recogniser.words.join(), heard];
    });
  expect(kept(told)).toMatchSnapshot();
});

test('a take as it is stored, and the sound of it', () => {
  const told = () =>
    [1e-12, 1e-3, 1, 50].map((level) => {
      const take = takeOf('one', { frames: framesBy(3, [level, 3 * level, level], 8), noise: framesBy(4, [level], 8)[0] ?? new Float32Array(8) });
      const { frames, noise } = soundOf(take);
      return [take.noise, summed(take.frames), frames.length, ...frames.map(summed), noise];
    });
  expect(kept(told)).toMatchSnapshot();
});

test('how far a take stands out of the noise, and what is wrong with it', () => {
  const told = () =>
    Array.from({ length: 40 }, (_, seed) => {
      const loud = loudnessBy(seed, 1 + (seed % 4)).slice(0, 1 + seed * 2);
      const noise = new Float32Array(4).fill(seed % 9 === 0 ? 0 : 0.2 * (seed % 7) ** 2);
      const stretch = { frames: framesBy(seed, loud, 4), noise, begins: seed % 4, ends: 90 };
      const recorded = { stretch: seed % 11 === 0 ? null : stretch, peak: 0.9 + 0.01 * (seed % 12), long: seed % 13 === 0 };
      return `${clearanceOf(stretch).toPrecision(7)} ${clearnessOf(stretch)} ${takeFaultOf('one', recorded, null)?.is}`;
    });
  expect(kept(told)).toMatchSnapshot();
});

test('what is recorded until a word has ended', () => {
  const told = (seed: number) => {
    const random = seededRandom(seed);
    const rate = 1000;
    const recording = new TakeRecording(rate);
    for (let piece = 0; piece < 30; piece++) {
      const loud = piece < 6 ? 0.001 : piece < 8 + seed ? 0.4 : 0.001;
      const found = recording.push(Float32Array.from({ length: 97 }, () => loud * (random() - 0.5 - 0.1 * (seed % 3))));
      if (found !== null) return [piece, found.peak, found.long ? 1 : 0, found.stretch?.begins ?? -1, found.stretch?.frames.length ?? -1];
    }
    const { stretch, peak, long } = recording.gaveUp();
    return [stretch === null ? 0 : 1, peak, long ? 1 : 0];
  };
  expect(kept(() => [0, 1, 2, 5, 8, 12, 18, 19].map(told))).toMatchSnapshot();
});
