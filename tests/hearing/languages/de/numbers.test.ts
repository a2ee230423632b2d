// Contract of numbers in German: a correction that is said is read back to itself, however it is said or written; so is a focal length.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { GERMAN } from '../../../../src/hearing/languages/de/german.ts';
import { sayCorrection } from '../../../../src/hearing/languages/de/sayCorrection.ts';
import { numberWordsIn } from '../../../../src/logbook/search/numberWords.ts';
import { correctionsIn } from '../../../../src/voice/corrections.ts';
import { strictMatcherFor } from '../../../../src/voice/matching.ts';
import { hearingIn } from './heardIn.ts';

const { heard, questionIn } = hearingIn(GERMAN);
const { correctionIn, wordsOf } = correctionsIn(GERMAN);
const strictly = strictMatcherFor(GERMAN);
const { inFigures, digitsJoined } = numberWordsIn(GERMAN.numbers);
const ALL = Array.from({ length: 101 }, (_, at) => at - 50);
const signed = ALL.filter((value) => value !== 0);

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

  test('is read back as itself', () => {
    for (const value of ALL) {
      expect(correctionIn(wordsOf(sayCorrection(value)))).toBe(value);
      expect(heard(`wert ${sayCorrection(value)}`, ['set'], 50)).toMatchObject({ is: 'taken', input: { told: 'set', value } });
      expect(strictly([{ text: `wert ${sayCorrection(value)}` }], ['set'], true)).toMatchObject({ is: 'taken', input: { value } });
    }
  });

  const written = (value: number, minus: string): string => `${value > 0 ? '+' : value < 0 ? minus : ''}${Math.abs(value)}`;
  const FORMS: readonly ((value: number) => string)[] = [
    (value) => written(value, '-'),
    (value) => written(value, '\u2212'),
    (value) => `Wert ${written(value, '\u2013')}.`,
    (value) => `Wert ${value > 0 ? 'plus' : 'minus'} ${Math.abs(value)} bitte`,
    (value) => `Okay, setze auf ${sayCorrection(value)}.`,
    (value) => `stell den Wert auf ${sayCorrection(value)}, danke`,
    (value) => `${value > 0 ? 'Positiv' : 'Negativ'} ${Math.abs(value)}`,
    (value) => `Korrektur ${value > 0 ? 'plus' : 'minus'} ${[...String(Math.abs(value))].join(' ')}`,
    (value) => `äh ${sayCorrection(value).replace('dreißig', 'dreissig').replace(/zwei$/, 'zwo')}`,
    (value) => sayCorrection(value).replace('fünf', 'fuenf').replace('zwölf', 'zwoelf'),
  ];

  test('is understood in every form that a recogniser writes', () => {
    fc.assert(
      fc.property(fc.constantFrom(...signed), fc.constantFrom(...FORMS), (value, form) => {
        expect({ said: form(value), ...heard(form(value), ['set', 'undo', 'pause', 'skip'], 50) }).toMatchObject({
          is: 'taken',
          input: { told: 'set', value },
        });
      }),
      { numRuns: 600 },
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

  test('zero needs no sign', () => {
    for (const said of ['Wert null', 'Wert 0', 'setze auf null', 'auf null, bitte'])
      expect(heard(said, ['set'])).toMatchObject({ is: 'taken', input: { value: 0 } });
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

  test('whose sign was not heard is never taken', () => {
    for (const value of signed) expect(heard(`wert ${GERMAN.numbers.say(Math.abs(value))}`, ['set'], 50)).toEqual({ is: 'unclear', best: null });
  });
});

describe('a focal length', () => {
  const { say, also } = GERMAN.numbers;

  test('is written in figures, however it is said', () => {
    for (let length = 8; length <= 800; length++) {
      for (const said of [say(length), ...also(length), String(length)]) expect({ said, written: inFigures(said) }).toEqual({ said, written: String(length) });
    }
    expect([1050, 1200, 1999].map(say)).toEqual(['eintausendfünfzig', 'eintausendzweihundert', 'eintausendneunhundertneunundneunzig']);
    expect(inFigures('neunzehnhundertneunundneunzig')).toBe('1999');
  });

  test('is asked for, in words and in figures', () => {
    for (let length = 8; length <= 800; length++) {
      for (const asked of [`Logbuch ${say(length)}`, `Logbuch ${length}`, `Such nach dem ${length}er`]) {
        const query = questionIn(asked);
        expect({ asked, found: query === null ? null : inFigures(query).split(' ').includes(String(length)) }).toEqual({ asked, found: true });
      }
    }
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
