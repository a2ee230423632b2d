// Contract of what a country measures and prints in (Unicode CLDR, measurement systems and paper sizes, from memory).
import { expect, test } from 'vitest';
import { countryAmong, countryFor } from '../src/country.ts';

test.each([
  [['en-US', 'en'], 'ft', 'Letter'],
  [['es-US'], 'ft', 'Letter'],
  [['en-LR'], 'ft', 'A4'],
  [['my'], 'ft', 'A4'],
  [['en'], 'm', 'A4'],
  [['en', 'en-US'], 'ft', 'Letter'],
  [['en', 'de'], 'm', 'A4'],
  [['fr-CA', 'en-US'], 'm', 'Letter'],
  [['es-MX'], 'm', 'Letter'],
  [['en-GB', 'en-US'], 'm', 'A4'],
  [['de'], 'm', 'A4'],
  [['de-Latn-AT'], 'm', 'A4'],
  [['ja'], 'm', 'A4'],
  [['es-419', 'es-US'], 'm', 'A4'],
  [['C', 'en-US'], 'ft', 'Letter'],
  [[], 'm', 'A4'],
] as const)('%j: %s and %s', (liked, unit, paper) => expect(countryAmong(liked)).toEqual({ unit, paper }));

test('what a person chose goes before the country, but for the paper', () => {
  expect(countryFor('country', ['en-US'])).toEqual({ unit: 'ft', paper: 'Letter' });
  expect(countryFor('m', ['en-US'])).toEqual({ unit: 'm', paper: 'Letter' });
  expect(countryFor('ft', ['en'])).toEqual({ unit: 'ft', paper: 'A4' });
});
