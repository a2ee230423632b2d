// Properties of the distance between sounds and of the letters' sounds.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import { SYMBOLS } from '../../../src/hearing/languages/sounds.ts';
import { WORDS } from '../../../src/sweep/inputs.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { soundDistance } from '../../../src/voice/phonetic/soundDistance.ts';

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
