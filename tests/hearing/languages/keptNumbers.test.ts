// Numbers in words, kept: every number that a language says, in every way that is heard for it, hundred by hundred, and legibly those at
// which a rule begins or ends.
import { describe, expect, test } from 'vitest';
import { MISHEARD_NUMBERS as MISHEARD_DE } from '../../../src/hearing/languages/de/misheard.ts';
import { NUMBERS as DE } from '../../../src/hearing/languages/de/numbers.ts';
import { sayWhole as sayDe } from '../../../src/hearing/languages/de/say.ts';
import { MISHEARD_NUMBERS as MISHEARD_EN } from '../../../src/hearing/languages/en/misheard.ts';
import { NUMBERS as EN } from '../../../src/hearing/languages/en/numbers.ts';
import { sayWhole as sayEn } from '../../../src/hearing/languages/en/say.ts';
import { MISHEARD_NUMBERS as MISHEARD_ES } from '../../../src/hearing/languages/es/misheard.ts';
import { NUMBERS as ES } from '../../../src/hearing/languages/es/numbers.ts';
import { sayWhole as sayEs } from '../../../src/hearing/languages/es/say.ts';
import { MISHEARD_NUMBERS as MISHEARD_FR } from '../../../src/hearing/languages/fr/misheard.ts';
import { NUMBERS as FR } from '../../../src/hearing/languages/fr/numbers.ts';
import { joined, sayWhole as sayFr } from '../../../src/hearing/languages/fr/say.ts';
import type { MisheardNumbers, SaidNumbers } from '../../../src/hearing/languages/heardLanguage.ts';
import { MISHEARD_NUMBERS as MISHEARD_JA } from '../../../src/hearing/languages/ja/misheard.ts';
import { NUMBERS as JA } from '../../../src/hearing/languages/ja/numbers.ts';
import { sayWhole as sayJa } from '../../../src/hearing/languages/ja/say.ts';
import { numberForms } from '../../../src/voice/numberForms.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { textSum } from './textSum.ts';

const HUNDREDS = Array.from({ length: 20 }, (_, at) => Array.from({ length: 100 }, (__, rest) => 100 * at + rest));
const EDGES = [0, 1, 9, 10, 11, 12, 15, 16, 17, 19, 20, 21, 22, 29, 30, 31, 32, 33, 40, 60, 61, 69, 70, 71, 75, 79, 80, 81, 90, 91, 99];
const OVER = [100, 101, 102, 109, 110, 111, 135, 180, 199, 200, 201, 300, 599, 999, 1000, 1001, 1099, 1100, 1110, 1200, 1999];

describe.each<[string, (whole: number) => string, SaidNumbers, MisheardNumbers]>([
  ['German', sayDe, DE, MISHEARD_DE],
  ['English', sayEn, EN, MISHEARD_EN],
  ['Spanish', sayEs, ES, MISHEARD_ES],
  ['French', sayFr, FR, MISHEARD_FR],
  ['Japanese', sayJa, JA, MISHEARD_JA],
])('%s', (_, say, numbers, misheard) => {
  test('numbers at which a rule begins or ends', () => {
    expect([...EDGES, ...OVER].map((whole) => `${whole} ${[say(whole), ...numbers.also(whole)].join(', ')}`)).toMatchSnapshot();
  });

  test('all of them, and all that is heard for them', () => {
    expect(sevenDigits(HUNDREDS.map((wholes) => textSum(wholes.map(say))))).toMatchSnapshot('said');
    expect(sevenDigits(HUNDREDS.map((wholes) => textSum(wholes.flatMap(numbers.also))))).toMatchSnapshot('also heard');
  });

  test('what is said is what is heard', () => {
    expect(HUNDREDS.flat().filter((whole) => numbers.say(whole) !== say(whole))).toEqual([]);
  });

  test('numbers that are taken for others, and how they are misspelt', () => {
    expect(misheard.takenFor.map((pair) => pair.join(' for ')).join(', ')).toMatchSnapshot('taken for others');
    expect(sevenDigits([Object.keys(misheard.spellings).length, textSum(Object.entries(misheard.spellings).flat())])).toMatchSnapshot('misspelt');
  });
});

test('a number below a hundred has one form, and from ten on one of its digits, too', () => {
  const forms = numberForms({ ...EN, say: String });
  expect(forms.filter(({ size }) => [0, 9, 10, 99].includes(size)).map(({ words, size }) => `${size}: ${words}`)).toEqual([
    '0: 0',
    '9: 9',
    '10: 10',
    '10: 1 0',
    '99: 99',
    '99: 9 9',
  ]);
  expect(forms).toHaveLength(190);
});

test('French tens are joined to what follows them with "et" before one and eleven alone', () => {
  expect([0, 1, 2, 11].map((rest) => joined('septante', rest, true))).toEqual(['septante', 'septante et un', 'septante-deux', 'septante et onze']);
  expect([0, 1, 11].map((rest) => joined('quatre-vingt', rest, false))).toEqual(['quatre-vingt', 'quatre-vingt-un', 'quatre-vingt-onze']);
});
