// Properties of the distance between sounds and of the letters' sounds.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import { SYMBOLS } from '../../../src/hearing/languages/sounds.ts';
import { WORDS } from '../../../src/sweep/inputs.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { leastDistance, soundDistance, weight } from '../../../src/voice/phonetic/soundDistance.ts';

const pronounce = pronouncer(ENGLISH.pronunciation);
const phones = fc.array(fc.constantFrom(...Object.values(SYMBOLS)), { minLength: 1, maxLength: 10 }).map((list) => list.join(''));

test('the distance is zero from a phrase to itself, the same both ways, and positive otherwise', () => {
  fc.assert(
    fc.property(phones, phones, (a, b) => {
      expect(soundDistance(a, a)).toBe(0);
      expect(soundDistance(a, b)).toBeCloseTo(soundDistance(b, a), 6);
      expect(a === b || soundDistance(a, b) > 0).toBe(true);
    }),
  );
});

test.each([
  ['write', 'right'],
  ['paws', 'pause'],
  ['ate', 'eight'],
  ['won', 'one'],
  ['undue', 'undo'],
])('%s and %s sound nearly the same', (a, b) => {
  expect(soundDistance(pronounce(a), pronounce(b))).toBeLessThan(0.21);
});

test('the far view sounds like no other word that is taught, also accepted or known to come back for one, nor like a number', () => {
  const sounds = (phrase: string): string => phrase.split(' ').map(pronounce).join('');
  const others = WORDS.filter((word) => word !== 'far view').flatMap((word) => {
    const { say, also, misheard } = ENGLISH.words[word];
    return [say, ...also, ...misheard];
  });
  const numbers = Array.from({ length: 21 }, (_, number) => ENGLISH.numbers.say(number));
  for (const other of [...others, ...numbers, 'plus', 'minus', 'look up']) {
    expect({ other, apart: soundDistance(sounds('far view'), sounds(other)) > 0.5 }).toEqual({ other, apart: true });
  }
});

test('any spelling has sounds or none, and never fails', () => {
  fc.assert(
    fc.property(fc.string(), (word) => {
      expect(typeof pronounce(word)).toBe('string');
    }),
  );
});

// To miss "p" at the beginning costs 1.4 of 0.5, "t" at the end 0.7 of 0.5; "p" for "b" a quarter. What there is to hear: "m" 0.55, "I" 1, "t" 0.5.
test.each([
  ['one sound for another, as a share of 0.5', 'p', 'b', 0.5],
  ['a sound that is missing, as a share of the half that is taken at least', 'p', '', 1.4],
  ['a sound more at the end, of 1.8 on the mean', 'mI', 'mIt', 0.35 / 1.8],
  ['a sound less at the end', 'mIt', 'mI', 0.35 / 1.8],
  ['one for another inside, of 1.5', 'pI', 'bI', 0.25 / 1.5],
  ['two more than the other has: "s" between vowel and end 0.7, "t" 0.35; of 1.55 and 2.75', 'mI', 'mIst', 1.05 / 2.15],
])('%s', (_, a, b, apart) => {
  expect(soundDistance(a, b)).toBeCloseTo(apart, 5);
});

test('what there is to hear is summed, and two that differ in it are at least so far apart', () => {
  expect(weight('mIt')).toBeCloseTo(2.05, 6);
  expect(leastDistance(1.55, 2.05)).toBeCloseTo((0.7 * 0.5) / 1.8, 6);
  expect(leastDistance(0, 0.4)).toBeCloseTo((0.7 * 0.4) / 0.5, 6);
});

test('a phrase longer than any before is as far from itself as a short one, and two of a hundred sounds by their one difference', () => {
  const long = 'mI'.repeat(100);
  expect(soundDistance(long, long)).toBe(0);
  expect(soundDistance(long, `${long.slice(0, -1)}E`)).toBeCloseTo(0.8 / 155, 5);
});
