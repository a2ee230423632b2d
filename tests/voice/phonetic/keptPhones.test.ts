// Numbers of the sounds, kept: what it costs to take each for each other, to miss each, and to miss it beside others.
import { expect, test } from 'vitest';
import { SYMBOLS, VOWEL_LETTERS } from '../../../src/hearing/languages/sounds.ts';
import { articulationOf, costOfSounds, isVowel, loss } from '../../../src/voice/phonetic/phones.ts';
import { isHesitation, lossBeside } from '../../../src/voice/phonetic/weakSpeech.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';

const ALL = [...Object.values(SYMBOLS), ...VOWEL_LETTERS.toUpperCase()];
const BESIDE = [undefined, 'p', 's', 'h', 'm', 'l', '$', 'i', 'I', 'u'];
const AMID = [...'pts2hmn8l@#iIuUr'];

test('what it costs to take one sound for another', () => {
  expect(Object.fromEntries(ALL.map((one) => [one, sevenDigits(ALL.map((other) => costOfSounds(one, other)))]))).toMatchSnapshot();
});

test('what it costs to miss a sound by itself, and one that is no sound', () => {
  expect(sevenDigits([...ALL, '?'].map(loss))).toMatchSnapshot();
});

test('what it costs to miss a sound beside others', () => {
  const costs = (phone: string): number[] => BESIDE.flatMap((before) => BESIDE.map((after) => lossBeside(before, phone, after)));
  expect(Object.fromEntries(AMID.map((phone) => [phone, sevenDigits(costs(phone))]))).toMatchSnapshot();
});

test('a sound is a vowel or is made in one way, and what is none is neither', () => {
  expect(ALL.filter(isVowel).join('')).toBe(ALL.filter((phone) => VOWEL_LETTERS.includes(phone.toLowerCase())).join(''));
  expect(ALL.filter((phone) => (articulationOf(phone) === null) !== isVowel(phone))).toEqual([]);
  expect([isVowel('?'), articulationOf('?')]).toEqual([false, null]);
});

test('a hesitation has a vowel, and nothing that the tongue makes', () => {
  expect(['U', 'R', 'hm', 'hUm', 'mU', 'U@', 'I', 'Ut', 'O', ''].map(isHesitation)).toEqual([true, true, false, true, true, false, false, false, true, false]);
});
