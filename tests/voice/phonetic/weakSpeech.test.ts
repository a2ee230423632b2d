// Contract of weak speech: what a sound costs to miss hangs on what stands beside it. The shares are those of `loss`, by hand.
import { expect, test } from 'vitest';
import { isHesitation, lossBeside } from '../../../src/voice/phonetic/weakSpeech.ts';

test.each([
  ['the first consonant is what a word is known by: 1.4 of 0.7', undefined, 's', 'I', 0.98],
  ['breath at the beginning is not', undefined, 'h', 'I', 0.3],
  ['a nasal at the end is in the vowel before: 0.7 of 0.55', 'I', 'n', undefined, 0.385],
  ['a nasal inside', 'I', 'n', 't', 0.55],
  ['what hisses at the end', 'I', 's', undefined, 0.7],
  ['a stop between vowels', 'I', 't', 'u', 0.5],
  ['a stop at the end is not released: 0.7 of 0.5', 'I', 't', undefined, 0.35],
  ['nor before a consonant', 'I', 't', 's', 0.35],
  ['nor behind one', 's', 't', 'I', 0.35],
  ['a vowel between consonants', 's', 'I', 't', 1],
  ['a vowel behind another: half', 'u', 'I', 't', 0.5],
  ['a vowel before another: half', 's', 'I', 'u', 0.5],
  ['a weak first syllable is swallowed: half of 0.55', undefined, 'u', 't', 0.275],
  ['a strong one is not', undefined, 'U', 't', 1],
  ['a weak one inside is not', 't', 'u', 't', 0.55],
])('%s', (_, before, phone, after, cost) => {
  expect(lossBeside(before, phone, after)).toBeCloseTo(cost, 6);
});

test('thinking is breath, voice and lips around a vowel; the tongue has no part in it', () => {
  expect(['um', 'hUm', 'r', 'o'].map(isHesitation)).toEqual([true, true, true, true]);
  expect(['hm', 'ut', 'tu', ''].map(isHesitation)).toEqual([false, false, false, false]);
});
