// Contract of numbers in a question: how photographers say them in English, and the figures that they are written in.
import { describe, expect, test } from 'vitest';
import { ENGLISH_WRITTEN } from '../../../src/hearing/languages/en/vocabulary.ts';
import { numberWordsIn } from '../../../src/logbook/search/numberWords.ts';

const { inFigures, digitsJoined } = numberWordsIn(ENGLISH_WRITTEN.numbers);
/** Each as it is written. */
const allBy = (by: (text: string) => string, said: Readonly<Record<string, string>>) => Object.fromEntries(Object.keys(said).map((text) => [text, by(text)]));

describe('in figures', () => {
  test('are whole numbers, below two thousand in one', () => {
    const said = {
      zero: '0',
      'eighty-five': '85',
      'eighty five old': '85 old',
      'nine hundred and ninety nine': '999',
      'nineteen hundred and ninety nine': '1999',
      'two thousand': '2 thousand',
      'a hundred': '100',
      'hundred and five': '105',
    };
    expect(allBy(inFigures, said)).toEqual(said);
  });

  test('leave the hundred out, with an oh before a single digit', () => {
    const said = {
      'one thirty-five': '135',
      'one ten': '110',
      'one oh five': '105',
      'one zero one': '101',
      'nine ninety nine': '999',
      'twenty-four seventy': '24 70',
      'one five': '1 5',
      'ten ten': '10 10',
    };
    expect(allBy(inFigures, said)).toEqual(said);
  });

  test('take the last digit for the hundreds of the next', () => {
    const said = { 'two hundred': '200', 'seventy two hundred': '70 200', 'seventy two hundred and five': '70 205', 'seventy two': '72' };
    expect(allBy(inFigures, said)).toEqual(said);
  });

  test('have decimals after a point, digit by digit', () => {
    const said = {
      'one point eight': '1.8',
      'two point oh five': '2.05',
      '3 point 5': '3.5',
      'one point': '1 point',
      'point eight': 'point 8',
      'one point eighty': '1 point 80',
      'f one point four lens': 'f1.4 lens',
    };
    expect(allBy(inFigures, said)).toEqual(said);
  });

  test('stand right after a letter', () => {
    const said = { 'M one': 'm1', 'm 2 eighty five': 'm2 85', 'a one': 'a 1', 'm zero five': 'm 0 5', 'm eighty': 'm 80' };
    expect(allBy(inFigures, said)).toEqual(said);
  });

  test('leave other words as they are, one blank between', () => {
    const said = { '  Orrin   eighty-five ': 'orrin 85', Örebro: 'orebro', '': '' };
    expect(allBy(inFigures, said)).toEqual(said);
  });
});

test('digits told one after another are one number, but not the end of a number in words', () => {
  const said = {
    'eight five': '85',
    'kx two oh nine three one': 'kx two oh 931',
    'four 7 one one': '4711',
    'thirty five one': 'thirty five one',
    'one hundred five six': 'one hundred five six',
    eight: 'eight',
    'eight fives': 'eight fives',
  };
  expect(allBy(digitsJoined, said)).toEqual(said);
});
