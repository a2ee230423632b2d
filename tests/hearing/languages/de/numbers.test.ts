// Contract of numbers in German, where it differs from other languages: joined words that a recogniser parts, homophones, old and new spellings.
import { describe, expect, test } from 'vitest';
import { GERMAN } from '../../../../src/hearing/languages/de/german.ts';
import { sayCorrection } from '../../../../src/hearing/languages/de/sayCorrection.ts';
import { numberWordsIn } from '../../../../src/logbook/search/numberWords.ts';
import { hearingIn, shortly } from '../heard.ts';

const { heard } = hearingIn(GERMAN);
const { inFigures, digitsJoined } = numberWordsIn(GERMAN.numbers);
const signed = Array.from({ length: 101 }, (_, at) => at - 50).filter((value) => value !== 0);

describe('a correction', () => {
  test('is said with its sign always, and half-steps as halves', () => {
    expect([6, -12, 0, 21, -30, 4.5, 1.5, -0.5, 120].map(sayCorrection)).toEqual([
      'plus sechs',
      'minus zwölf',
      'null',
      'plus einundzwanzig',
      'minus dreißig',
      'plus viereinhalb',
      'plus eineinhalb',
      'minus ein halb',
      'plus einhundertzwanzig',
    ]);
  });

  const FORMS: readonly ((value: number) => string)[] = [
    (value) => `stell den Wert auf ${sayCorrection(value)}, danke`,
    (value) => `äh ${sayCorrection(value).replace('dreißig', 'dreissig').replace(/zwei$/, 'zwo')}`,
    (value) => sayCorrection(value).replace('fünf', 'fuenf').replace('zwölf', 'zwoelf'),
  ];

  test('is understood in older and plainer spellings, and in a sentence', () => {
    const taken = (value: number): string => `wert ${value < 0 ? '\u2212' : '+'}${Math.abs(value)}`;
    expect(signed.flatMap((value) => FORMS.map((form) => form(value)).filter((said) => shortly(heard(said, ['set', 'undo'], 50)) !== taken(value)))).toEqual(
      [],
    );
  });

  test('in words that a recogniser parted is understood or asked about', () => {
    for (const value of signed) {
      for (const said of [sayCorrection(value).replace('und', ' und '), sayCorrection(value).replace(/(?<=.)(zehn|und)/, ' $1')]) {
        const answer = heard(`wert ${said}`, ['set'], 50);
        const best = answer.is === 'taken' ? answer : answer.is === 'unclear' ? answer.best : null;
        expect({ said, input: best?.input }).toMatchObject({ input: { value } });
      }
    }
  });

  test.each([
    ['Wert plus wir', 4],
    ['Wert plus für', 4],
    ['wert minus sex', -6],
    ['wert plus zwo', 2],
    ['wert plus frei', 3],
    ['wert minus neu', -9],
    ['wert plus lieben', 7],
    ['wert minus fünft', -5],
    ['wert plus zwölft', 12],
    ['wert plus achten', 8],
    ['wert minus zehen', -10],
    ['plus Elfe', 11],
    ['Werte minus acht', -8],
    ['wert blus sieben', 7],
    ['wert minos vier', -4],
    ['wert Linus vier', -4],
  ])('"%s" is %i', (text, value) => {
    expect(heard(text, ['set'])).toMatchObject({ is: 'taken', input: { value } });
  });

  test.each([
    ['Wert plus dreißig', 13],
    ['minus 40', -14],
    ['wert plus fünfzig bitte', 15],
    ['wert minus sechzig', -16],
    ['wert plus siebzig', 17],
    ['wert minus achtzig', -18],
    ['plus neunzig', 19],
    ['Pferd plus sieben', 7],
  ])('"%s" may be %i and is asked about', (text, value) => {
    expect(heard(text, ['set'])).toMatchObject({ is: 'unclear', best: { input: { value } } });
  });
});

describe('a focal length', () => {
  test('above a thousand is said in one word', () => {
    expect([1050, 1200, 1999].map(GERMAN.numbers.say)).toEqual(['eintausendfünfzig', 'eintausendzweihundert', 'eintausendneunhundertneunundneunzig']);
    expect(inFigures('neunzehnhundertneunundneunzig')).toBe('1999');
  });

  test.each([
    ['vierundzwanzig siebzig', '24 70'],
    ['siebzig zweihundert', '70 200'],
    ['vierundzwanzig bis hundertfünf', '24 bis 105'],
    ['eins fünfunddreißig', '135'],
    ['hundert und fünf', '105'],
    ['eins komma acht', '1.8'],
    ['zwo komma acht', '2.8'],
    ['fünf komma fünf', '5.5'],
    ['funf komma funf', '5.5'],
    ['m eins', 'm1'],
  ])('"%s" is written %s', (said, figures) => {
    expect(inFigures(said)).toBe(figures);
  });

  test.each([
    ['vier fünf sechs', '456'],
    ['acht funf', '85'],
    ['zwo null null', '200'],
  ])('told digit by digit, "%s" is one number', (said, figures) => {
    expect(digitsJoined(said)).toBe(figures);
  });
});
