// Contract of questions to the logbook in German, and of the next lens, in the many ways in which they are asked and written.
import { describe, expect, test } from 'vitest';
import { GERMAN } from '../../../../src/hearing/languages/de/german.ts';
import { asName, nameAfterNextIn } from '../../../../src/voice/nextLens.ts';
import { hearingIn } from '../heard.ts';

const { questionIn } = hearingIn(GERMAN);

describe('a question to the logbook', () => {
  test.each([
    ['Logbuch 85', 'funfundachtzig'],
    ['Logbuch fünfundachtzig', 'funfundachtzig'],
    ['bitte Logbuch 85', 'funfundachtzig'],
    ['äh, im Logbuch, ähm, 85 bitte', 'funfundachtzig'],
    ['lok Buch 85', 'funfundachtzig'],
    ['Lockbuch 50 mm', 'funfzig mm'],
    ['Logbuch 24-70 mm', 'vierundzwanzig siebzig mm'],
    ['Logbuch 85er', 'funfundachtzig'],
    ['schlag nach 135', 'einhundertfunfunddreißig'],
    ['schau nach 200', 'zweihundert'],
    ['suche nach 50', 'funfzig'],
    ['such das 85er', 'funfundachtzig'],
    ['zeig mir 35', 'funfunddreißig'],
    ['kannst du bitte das Logbuch 85', 'funfundachtzig'],
    ['was war mit dem 24 bis 70', 'dem vierundzwanzig bis siebzig'],
    ['was war das 85er', 'das funfundachtzig'],
    ['welchen Wert hat das 50er', 'das funfzig'],
    ['was ist 300', 'dreihundert'],
    ['Logbuch', ''],
    ['was war das', null],
    ['such die Schlüssel', null],
    ['zeig mal', null],
    ['was ist los', null],
  ])('"%s" asks for %s', (text, query) => {
    expect(questionIn(text)).toBe(query);
  });

  test('may name a lens', () => {
    expect(questionIn('was war mit dem Orrin', ['Orrin 85'])).toBe('dem orrin');
    expect(questionIn('was war mit dem Orrin')).toBeNull();
  });
});

test.each([
  ['nächstes Objektiv Corvid 85', 'Corvid 85'],
  ['Nächstes Objektiv ist Corvid fünfundachtzig', 'Corvid Fünfundachtzig'],
  ['als nächstes Orrin 35', 'Orrin 35'],
  ['weiter mit Velde 50', 'Velde 50'],
  ['nächster Schritt', null],
  ['nächstes Objektiv', null],
  ['nächstes bitte', null],
  ['next lens Corvid', null],
])('the next lens: "%s" names %s', (text, name) => {
  const found = nameAfterNextIn(GERMAN.naming)(text);
  expect(found && asName(found)).toBe(name);
});
