// Contract of questions told in single taught words: "look up", then digits or the name of a lens, until nothing more comes.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import { numberWordsIn } from '../../../src/logbook/search/numberWords.ts';
import { spelledQuestions, wholeQuestion } from '../../../src/voice/ownWords/spelledQuestion.ts';
import { spelledValues, type WordByWord } from '../../../src/voice/ownWords/spelledValue.ts';
import { matcherFor } from '../../../src/voice/phonetic/match.ts';

const { word: LOOK_UP_WORD, asked, isQuestion } = spelledQuestions(ENGLISH);
const { spelt } = spelledValues(ENGLISH);
const { digitsJoined, inFigures } = numberWordsIn(ENGLISH.numbers);

const NAMES = ['Orrin 85', 'Tarn 35'];
const ask = (words: readonly string[]): WordByWord | null =>
  words.reduce<WordByWord | null>((before, word, at) => (at > 0 && before === null ? null : asked(before, word, at, NAMES)), null);

describe('a question in taught words', () => {
  test('with any digits is read as the one number they spell', () => {
    const { questionIn } = matcherFor(ENGLISH);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 2, maxLength: 10 }), (digits) => {
        const told = ask([LOOK_UP_WORD, ...digits.map((digit) => ENGLISH.numbers.say(digit))]);
        const text = told && wholeQuestion(told, 100);
        expect(inFigures(digitsJoined(questionIn(text ?? '') ?? ''))).toBe(digits.join(''));
      }),
    );
  });

  test('may be about the taught name of a lens, and about nothing that is neither', () => {
    expect(ask([LOOK_UP_WORD, 'Orrin 85'])?.words).toEqual([LOOK_UP_WORD, 'Orrin 85']);
    expect(ask([LOOK_UP_WORD, 'solid'])).toBeNull();
    expect(ask(['eight'])).toBeNull();
  });

  test('is whole only when nothing more came in time', () => {
    const told = ask([LOOK_UP_WORD, 'eight', 'five']);
    expect(told && [wholeQuestion(told, 3.5), wholeQuestion(told, 4.5)]).toEqual([null, 'look up eight five']);
  });

  test('and a value are never the same telling', () => {
    const question = ask([LOOK_UP_WORD, 'eight']);
    const value = spelt(spelt(null, 'plus', 0), 'eight', 1);
    expect([question && isQuestion(question), value && isQuestion(value)]).toEqual([true, false]);
    expect(question && spelt(question, 'plus', 2)).toBeNull();
    expect(value && asked(value, 'five', 2, NAMES)).toBeNull();
  });
});
