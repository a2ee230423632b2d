// Contract of lengths in a form: with their unit or without, one or several, and never another length than was meant.
import { expect, test } from 'vitest';
import { typedDistances } from '../../src/panel/plan/typedDistances.ts';
import { typedDistance, typedFocalLength } from '../../src/panel/words/typedLength.ts';
import { typedNumber } from '../../src/panel/words/typedNumber.ts';

test.each([
  ['1,000', 1000],
  ['1,234.5', 1234.5],
  ['-1,000', -1000],
  ['0,125', 0.125],
  ['1 000', 1000],
  ['4.', 4],
  ['１２', 12],
  ['＋６', 6],
  ['－６', -6],
  ['\u2212６', -6],
  ['ー６', -6],
  ['０．５', 0.5],
  ['１，０００', 1000],
] as const)('the number “%s” is %d', (typed, value) => {
  expect(typedNumber(typed)).toBe(value);
});

test.each([
  ['4.25', 4250],
  ['4.25 m', 4250],
  ['4,25', 4250],
  ['425 cm', 4250],
  ['4,250 mm', 4250],
  ['14 ft', 4267],
  ['5 ft 9 in', 1753],
] as const)('the distance “%s” is %d mm', (typed, value) => expect(typedDistance(typed)).toBe(value));

test.each(['', 'far', '1750', '-2', '1,250 ft'])('“%s” is no distance, or could be two', (typed) => expect(typedDistance(typed)).toBeNaN());

test.each([
  ['85', 85],
  ['85 mm', 85],
  ['16,5', 16.5],
  ['1,200', 1200],
] as const)('the focal length “%s” is %d mm', (typed, value) => {
  expect(typedFocalLength(typed)).toBe(value);
});

test.each(['8.5 cm', '0.085', 'wide'])('“%s” is no focal length in millimetres', (typed) => expect(typedFocalLength(typed)).toBeNaN());

test.each([
  ['2 4.25', [2000, 4250]],
  ['2 4.25 m', [2000, 4250]],
  ['2 m, 4.25 m', [2000, 4250]],
  ['2m 4,25m', [2000, 4250]],
  ['2; 4,25; 2', [2000, 4250]],
  ['5 ft 9 in; 12 ft', [1753, 3658]],
  ['4 100', [4000, 100_000]],
  ['', []],
  ['２、４．２５ ｍ', [2000, 4250]],
  ['２　４', [2000, 4000]],
] as const)('“%s” is each of its distances, once', (typed, distances) => expect(typedDistances(typed)).toEqual(distances));

test.each(['2 far', '2 1750', '4 m and 5 m'])('in “%s” one is none', (typed) => expect(typedDistances(typed)).toBeNull());
