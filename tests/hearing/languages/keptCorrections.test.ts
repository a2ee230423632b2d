// Corrections in words, kept: each language's, at every half and quarter of a step, on both sides of nought.
import { expect, test } from 'vitest';
import * as de from '../../../src/hearing/languages/de/sayCorrection.ts';
import * as en from '../../../src/hearing/languages/en/sayCorrection.ts';
import * as es from '../../../src/hearing/languages/es/sayCorrection.ts';
import * as fr from '../../../src/hearing/languages/fr/sayCorrection.ts';
import * as ja from '../../../src/hearing/languages/ja/sayCorrection.ts';

const QUARTERS = Array.from({ length: 13 }, (_, at) => at / 4);
const VALUES = [0, ...[0.5, 1, 1.5, 2, 4.5, 12, 21.5, 31.5].flatMap((size) => [size, -size])];

test.each([
  ['German', de],
  ['English', en],
  ['Spanish', es],
  ['French', fr],
  ['Japanese', ja],
])('%s', (_, { sayCorrection, sayNumber }) => {
  expect(VALUES.map((value) => `${value} ${sayCorrection(value)}`).join(', ')).toMatchSnapshot('corrections');
  expect(QUARTERS.map((value) => `${value} ${sayNumber(value)}`).join(', ')).toMatchSnapshot('numbers');
});
