// Contract of values told in single words: a sign, then one or two digits, read by the same matcher as everything else.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ENGLISH_WRITTEN } from '../../../src/hearing/languages/en/vocabulary.ts';
import { strictMatcherFor } from '../../../src/voice/matching.ts';
import { sayNumber } from '../../../src/hearing/languages/en/sayCorrection.ts';
import { spelledValues, type WordByWord } from '../../../src/voice/ownWords/spelledValue.ts';

const match = strictMatcherFor(ENGLISH_WRITTEN);
const { words: SPELLING_WORDS, spelt, wholeText, gaveUp } = spelledValues(ENGLISH_WRITTEN);

function spell(words: readonly string[]): WordByWord | null {
  let spelling: WordByWord | null = null;
  for (const [at, word] of words.entries()) {
    spelling = spelt(spelling, word, at);
    if (spelling === null) return null;
  }
  return spelling;
}

test('every value of a usual scale can be spelt and is read as itself', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -20, max: 20 }).filter((n) => n !== 0),
      fc.boolean(),
      (value, withSet) => {
        const digits = [...String(Math.abs(value))].map((digit) => sayNumber(Number(digit)));
        const spelling = spell([...(withSet ? ['set'] : []), value > 0 ? 'plus' : 'minus', ...digits]);
        const text = spelling && wholeText(spelling, 100);
        expect(match([{ text: text ?? '' }], ['set'], true)).toMatchObject({
          is: 'taken',
          input: { told: 'set', value },
        });
      },
    ),
  );
});

test('one digit is whole only when no second one came in time', () => {
  const spelling = spell(['set', 'plus', 'one']);
  expect(spelling && wholeText(spelling, 2.5)).toBeNull();
  expect(spelling && wholeText(spelling, 4)).toBe('set plus one');
});

test('digits without a sign are not begun, except zero after "set"', () => {
  expect(spell(['seven'])).toBeNull();
  expect(spell(['set', 'seven'])).toBeNull();
  expect(spell(['set', 'zero'])).not.toBeNull();
});

test('a sign without digits is given up after a while', () => {
  const spelling = spell(['set', 'minus']);
  expect(spelling && gaveUp(spelling, 2)).toBe(false);
  expect(spelling && gaveUp(spelling, 6)).toBe(true);
});

test('no row of words makes more than a sign and two digits', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom('set', 'left', ...SPELLING_WORDS), { maxLength: 8 }), (words) => {
      const spelling = spell(words);
      expect((spelling?.words.length ?? 0) <= 4).toBe(true);
    }),
  );
});
