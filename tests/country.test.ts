// Contract of what a country measures and prints in (Unicode CLDR, measurement systems and paper sizes, from memory).
import { expect, test } from 'vitest';
import { countryAmong } from '../src/country.ts';

test.each([
  [['en-US', 'en'], 'ft', 'Letter'],
  [['es-US'], 'ft', 'Letter'],
  [['en-LR'], 'ft', 'A4'],
  [['my'], 'ft', 'A4'],
  [['en'], 'ft', 'Letter'],
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
