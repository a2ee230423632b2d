// Contract of numbers in fields: written with the language's own decimal sign, and read back as they were, in every language.
import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { LANGUAGES } from '../../../src/language.ts';
import { readNumber } from '../../../src/optics/quantity.ts';
import { millimetres } from '../../../src/units.ts';
import { distanceTyped } from '../../../src/panel/words/distanceTyped.ts';
import { numberTyped } from '../../../src/panel/words/numberTyped.ts';
import { typedNumber } from '../../../src/panel/words/typedNumber.ts';
import { inUse } from '../../../src/words/inUse.ts';

const before = inUse.value;
afterEach(() => void (inUse.value = before));
const inLanguage = (screens: (typeof LANGUAGES)[number]): void => void (inUse.value = { ...before, screens });

test.each([
  ['en', '6.75', '\u22122.5'],
  ['de', '6,75', '\u22122,5'],
  ['es', '6,75', '\u22122,5'],
  ['fr', '6,75', '\u22122,5'],
  ['ja', '6.75', '\u22122.5'],
] as const)('in %s a length of 6750 mm stands in its field as %s', (language, length, below) => {
  inLanguage(language);
  expect(distanceTyped(millimetres(6750), 'm')).toBe(length);
  expect(numberTyped(-2.5)).toBe(below);
});

test.each(LANGUAGES)('in %s what is written is read back, whatever its size and sign', (language) => {
  inLanguage(language);
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 0, max: 4 }), (number, decimals) => {
      const text = numberTyped(number, decimals);
      expect(readNumber(text)).toBeCloseTo(Number(number.toFixed(decimals)), 6);
      expect(typedNumber(text)).toBeCloseTo(Number(number.toFixed(decimals)), 6);
    }),
  );
});
