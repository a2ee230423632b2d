// Contract of the costs: a sound taken for another costs by how differently the mouth makes it, whatever listeners confuse less.
// The figures are worked out by hand from the tables of place, manner, height and back.
import { expect, test } from 'vitest';
import { costOfSounds, isVowel, loss } from '../../../src/voice/phonetic/phones.ts';

test.each([
  ['voice alone, but never under a quarter', 'p', 'b', 0.25],
  ['a little place: 0.45 of 0.4 is under a quarter', 'p', 't', 0.25],
  ['lips and palate: 0.45 of 0.8', 'p', '1', 0.36],
  ['place and hissing: 0.135 + 0.25', 's', 'f', 0.385],
  ['place, voice and hissing: 0.135 + 0.2 + 0.25', '0', 'f', 0.585],
  ['two that hiss: 0.45 of 0.15', 's', '7', 0.25],
  ['manner and hissing: 0.9 of 0.55, and 0.25', 's', 't', 0.745],
  ['manner and voice: 0.9 of 0.6, and 0.2', 'm', 'p', 0.74],
  ['manner, place and voice: 0.315 + 0.045 + 0.2', '2', 'd', 0.56],
  ['never over 1: 0.9 of 0.75, 0.36, 0.2', 'p', '8', 1],
  ['a dental made as a stop', '4', 't', 0.3],
  ['a dental made with the lip', '5', '9', 0.25],
  ['a glide and its vowel', '$', 'i', 0.3],
  ['a consonant and a vowel that are nothing alike', 'p', 'i', 1.15],
])('consonants: %s', (_, one, other, cost) => {
  expect(costOfSounds(one, other)).toBeCloseTo(cost, 6);
  expect(costOfSounds(other, one)).toBeCloseTo(cost, 6);
});

// "i" and "e" begin at (1, 0) and (0.65, 0.05) and end alike: 0.65 of hypot(0.35, 0.05) = 0.22981.
test.each([
  ['neither stressed: 0.7 of it', 'i', 'e', 0.160868],
  ['one of them: 0.95', 'I', 'e', 0.21832],
  ['both: a corner of the vowels is never taken for less than 0.8', 'I', 'E', 0.8],
  ['both, and listeners take them for each other', 'O', 'C', 0.25],
  ['listeners hardly take these, but they are made alike: 1.3 of 0.65 of hypot(0.15, 0.05) and 0.35 of hypot(0.5, 0.1)', 'E', 'X', 0.3656],
  ['with the colour of "r": 0.7 of 0.65 of hypot(0.1, 0.4 of 0.3) and 0.35 of 0.1, and 0.15', 'r', 'u', 0.245573],
])('vowels: %s', (_, one, other, cost) => {
  expect(costOfSounds(one, other)).toBeCloseTo(cost, 4);
  expect(costOfSounds(other, one)).toBeCloseTo(cost, 4);
});

test('a sound costs nothing for itself, whatever its stress', () => {
  for (const [one, other] of ['pp', 'ii', 'Ii', 'iI'].map((pair) => [...pair] as [string, string])) expect(costOfSounds(one, other)).toBe(0);
});

test.each([
  ['a stressed vowel', 'I', 1],
  ['a vowel', 'i', 0.75],
  ['a weak vowel', 'u', 0.55],
  ['breath', 'h', 0.3],
  ['what hisses', 's', 0.7],
  ['a stop', 't', 0.5],
  ['a nasal', 'm', 0.55],
  ['a fricative', 'f', 0.45],
  ['what is no sound at all', '?', 0.5],
])('to miss %s costs its share', (_, phone, cost) => {
  expect(loss(phone)).toBe(cost);
});

test('a vowel is one whatever its stress', () => {
  expect([...'iI@p'].map(isVowel)).toEqual([true, true, false, false]);
});
