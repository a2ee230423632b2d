// Values at the edges of what counts: openings that are nearly "set", that are too far from it and that are long; signs and numbers beside them.
import { expect, test } from 'vitest';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';
import { courtesyIn } from '../../../src/voice/phonetic/courtesy.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { spokenWordsIn } from '../../../src/voice/phonetic/spokenText.ts';
import { valuesIn, type Values } from '../../../src/voice/phonetic/values.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { WHOLE } from '../keptTalk.ts';

function hearing(language: HeardLanguage): (text: string) => ReturnType<Values> {
  const pronounce = pronouncer(language.pronunciation);
  const [values, spoken] = [valuesIn(language, pronounce, courtesyIn(language, pronounce)), spokenWordsIn(language)];
  return (text) => values(spoken(text), 20);
}

const shown = (found: ReturnType<Values>): string =>
  found.map(({ value, apart, doubtful }) => `${value} ${String(sevenDigits(apart))}${doubtful ? '?' : ''}`).join(', ');

test('what stands before a sign or a nought may be nearly "set", and farther where all else is exact', () => {
  const heard = hearing(WHOLE);
  const openings = ['gotu', 'gobu', 'kovu', 'ketu', 'kosu', 'hotu', 'totu', 'kot', 'otu', 'kotuma', 'kodi', 'sotu', 'mula', 'kodu la', 'kotu lo', 'gobu lo', 'ko tu', 'kotu la ma', 'kotu la ma to', 'ko tu la', 'ko tu la te']; // prettier-ignore
  const ends = ['nul', 'dúpi luma', 'dúpi lumu', 'dúbi luma', 'dú pi luma'];
  expect(openings.map((opening) => `${opening}: ${ends.map((end) => shown(heard(`${opening} ${end}`)) || '-').join(' | ')}`)).toMatchSnapshot();
});

test('of a word before a sign only the beginning and the stressed vowel may be like "set"', () => {
  const heard = hearing(ENGLISH);
  const openings = ['september', 'settle', 'sentence', 'sebastian', 'cell', 'sex', 'said', 'shh', 'sat', 'setting', 'set the', 'settle it', 'set the value', 'set it to the', 'set it to to']; // prettier-ignore
  expect(openings.map((opening) => `${opening}: ${shown(heard(`${opening} plus seven`)) || '-'}`)).toMatchSnapshot();
});

test('a nought with a minus is nought', () => {
  expect(hearing(WHOLE)('kotu harô nul')[0]?.value).toBe(0);
});

test('a sign in one word or two, nearly as it is spelt, before a number and before nothing, and one with much more to hear', () => {
  const heard = hearing(WHOLE);
  const signs = ['dúpi', 'dubi', 'tupi', 'dú bi', 'duvi', 'dupa', 'hara', 'haro', 'ha ro', 'arô', 'hago', 'garô', 'd', 'kotudubi', 'kotuhara', 'kotuharo', 'haaroo']; // prettier-ignore
  expect(signs.map((sign) => `${sign}: ${['foso', 'fozo', ''].map((end) => shown(heard(`${sign} ${end}`)) || '-').join(' | ')}`)).toMatchSnapshot();
});
