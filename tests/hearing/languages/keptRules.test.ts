// What a language's data are put together from, kept: a list of words as it is written and as the build shortens it, rules for letters that
// are made of others, and rows of phrases.
import { expect, test } from 'vitest';
import { LETTERS as DE } from '../../../src/hearing/languages/de/letters.ts';
import { LETTERS as ES } from '../../../src/hearing/languages/es/letters.ts';
import { misheardFor } from '../../../src/hearing/languages/es/misheard.ts';
import { LETTERS as FR } from '../../../src/hearing/languages/fr/letters.ts';
import { SETTING_BEHIND } from '../../../src/hearing/languages/ja/around.ts';
import { LETTERS as JA } from '../../../src/hearing/languages/ja/letters.ts';
import { listedWords } from '../../../src/hearing/languages/wordList.ts';
import { WORDS } from '../../../src/sweep/inputs.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { textSum } from './textSum.ts';

const TENTHS = 10;

test.each([
  ['German', DE],
  ['Spanish', ES],
  ['French', FR],
  ['Japanese', JA],
])('the rules for letters in %s', (_, rules) => {
  const size = Math.ceil(rules.length / TENTHS);
  const sums = Array.from({ length: TENTHS }, (__, at) => textSum(rules.slice(at * size, (at + 1) * size).flat()));
  expect(sevenDigits([rules.length, ...sums])).toMatchSnapshot();
});

test('the kana with a small one behind them, and long ones', () => {
  const few = JA.filter(([letters]) => /^(?:き|し|ち|に|り|つ|ふ|て|う|く|で|を|や)/.test(letters) || letters === 'あ');
  expect(few.map(([letters, sounds]) => letters + sounds).join(' ')).toMatchSnapshot();
});

test('what sets a value in Japanese when it stands behind it', () => {
  expect(SETTING_BEHIND.join(' ')).toMatchSnapshot();
});

test('what is misheard for each word in Spanish, first what it is spelt as, then what counts only as it is written', () => {
  expect(WORDS.map((word) => `${word}: ${misheardFor(word).join(', ')}`)).toMatchSnapshot();
});

test('a list of words is read as it is written', () => {
  expect(listedWords('\nable Ebul\nabout ubKt\nalone\n')).toEqual([['able', 'Ebul'], ['about', 'ubKt'], ['alone', '']]); // prettier-ignore
});

test('a list that the build shortened begins each word with so many letters of the one above it', () => {
  expect(listedWords('able Ebul\n2out 0ubKt\n3ve 2U9\n0be 0bI')).toEqual([['able', 'Ebul'], ['about', 'ubKt'], ['above', 'ubU9'], ['be', 'bI']]); // prettier-ignore
});
