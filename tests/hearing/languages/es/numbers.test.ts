// Contract of numbers in Spanish: what is said is read back as itself, in words, in figures and in the other ways of saying it.
import { describe, expect, test } from 'vitest';
import { SPANISH } from '../../../../src/hearing/languages/es/spanish.ts';
import { sayCorrection } from '../../../../src/hearing/languages/es/sayCorrection.ts';
import { numberWordsIn } from '../../../../src/logbook/search/numberWords.ts';
import { correctionsIn } from '../../../../src/voice/corrections.ts';
import { heardIn, MOMENTS } from './heardIn.ts';

const { numbers } = SPANISH;
const { heard } = heardIn(SPANISH);
const { correctionIn, wordsOf } = correctionsIn(SPANISH);
const { inFigures, digitsJoined } = numberWordsIn(numbers);
const LARGEST = 50;
const CORRECTIONS = Array.from({ length: 2 * LARGEST + 1 }, (_, at) => at - LARGEST);
const DIALLING = MOMENTS.find(([moment]) => moment === 'dialling')?.[1] ?? [];
const told = (text: string) => heard(text, DIALLING, LARGEST);
const sign = (value: number): string => (value < 0 ? 'menos' : 'más');
const plainly = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '');

describe('a correction', () => {
  test('is said with its sign always, and half-steps as halves', () => {
    expect([6, -12, 0, 4.5, -0.5, 21.5, 120].map(sayCorrection)).toEqual([
      'más seis',
      'menos doce',
      'cero',
      'más cuatro y medio',
      'menos medio',
      'más veintiuno y medio',
      'más ciento veinte',
    ]);
  });

  test('is read back as itself where it is spelt as taught', () => {
    for (const value of CORRECTIONS) expect({ value, read: correctionIn(wordsOf(sayCorrection(value))) }).toEqual({ value, read: value });
  });

  const FORMS: readonly (readonly [string, (value: number) => string])[] = [
    ['in words', (value) => `pon ${sayCorrection(value)}`],
    ['in words without "pon"', sayCorrection],
    ['without accents', (value) => plainly(`Pon ${sayCorrection(value)}.`)],
    ['in figures', (value) => `${value < 0 ? '-' : '+'}${Math.abs(value)}`],
    ['in figures with a true minus', (value) => `pon ${value < 0 ? '\u2212' : '+'}${Math.abs(value)}`],
    ['with its sign in words', (value) => `${sign(value)} ${Math.abs(value)}`],
    ['with the other word for its sign', (value) => `${value < 0 ? 'negativo' : 'positivo'} ${numbers.say(Math.abs(value))}`],
    ['digit by digit', (value) => `pon ${sign(value)} ${[...String(Math.abs(value))].map((digit) => numbers.say(Number(digit))).join(' ')}`],
    ['with courtesy around it', (value) => `eh, pues ponlo en ${sayCorrection(value)}, por favor`],
  ];

  test.each(FORMS)('is taken as itself %s', (_, form) => {
    for (const value of CORRECTIONS.filter((one) => one !== 0)) {
      expect({ said: form(value), ...told(form(value)) }).toMatchObject({ is: 'taken', input: { told: 'set', value } });
    }
  });

  test('is taken as itself, or asked about, in the other ways of saying its number', () => {
    for (const value of CORRECTIONS.filter((one) => one !== 0)) {
      for (const way of numbers.also(Math.abs(value))) {
        const said = `${sign(value)} ${way}`;
        const answer = told(said);
        expect({ said, value: answer.is === 'ignored' ? null : 'best' in answer ? answer.best?.input : answer.input }).toMatchObject({ value: { value } });
      }
    }
  });

  test.each([
    ['pon cero', 0],
    ['ponlo en cero', 0],
    ['ponmás siete', 7],
    ['con más siete', 7],
    ['valor menos nueve', -9],
    ['pon menos dose', -12],
    ['más sinco', 5],
    ['más hocho', 8],
    ['me nos tres', -3],
    ['menos veintiún', -21],
    ['más un', 1],
    ['más treintaicinco', 35],
  ])('"%s" is %i', (text, value) => {
    expect(told(text)).toMatchObject({ is: 'taken', input: { told: 'set', value } });
  });

  test.each([
    ['más dios', 2],
    ['más quinse', 15],
    ['más ses', 6],
    ['menos on se', -11],
  ])('"%s" may be %i and is asked about', (text, value) => {
    expect(told(text)).toMatchObject({ is: 'unclear', best: { input: { value } } });
  });

  test.each(['más veintisiete', 'más treinta y siete'])('"%s" is off a scale of twenty, may have been a teen, and is asked about', (text) => {
    expect(heard(text, DIALLING, 20)).toMatchObject({ is: 'unclear', best: { input: { value: 17 } } });
  });

  test('is never taken without its sign', () => {
    for (let value = 1; value <= LARGEST; value++) {
      for (const said of [`pon ${value}`, `pon ${numbers.say(value)}`, `ponlo en ${value}`, numbers.say(value)]) {
        expect({ said, is: told(said).is }).not.toMatchObject({ is: 'taken' });
      }
    }
    expect(told('pon siete')).toEqual({ is: 'unclear', best: null });
  });

  test.each(['más o menos', 'más tarde', 'menos mal', 'más luz', 'son las ocho menos cinco', 'más bien no', 'al menos', 'una vez más', 'dos más dos'])(
    '"%s" is other talk',
    (text) => {
      expect(told(text)).toEqual({ is: 'ignored' });
    },
  );
});

describe('a focal length', () => {
  const LENGTHS = Array.from({ length: 793 }, (_, at) => at + 8);

  test('is written in figures however it is said', () => {
    for (const length of LENGTHS) {
      for (const said of [numbers.say(length), plainly(numbers.say(length)), ...numbers.also(length)]) {
        expect({ said, written: inFigures(said) }).toEqual({ said, written: String(length) });
      }
    }
  });

  test.each([
    ['uno treinta y cinco', '135'],
    ['uno cero cinco', '105'],
    ['veinticuatro setenta', '24 70'],
    ['setenta doscientos', '70 200'],
    ['ciento cincuenta seiscientos', '150 600'],
    ['cien cuatrocientos', '100 400'],
    ['cincuenta uno coma cuatro', '50 1.4'],
    ['ochenta y cinco uno coma dos', '85 1.2'],
    ['cien dos coma ocho', '100 2.8'],
    ['mil doscientos', '1200'],
    ['velde m uno', 'velde m1'],
    ['doscientas', '200'],
  ])('"%s" is written %s', (said, written) => {
    expect(inFigures(said)).toBe(written);
  });

  test('digits one after another are one number', () => {
    expect(digitsJoined('cuatro cero siete uno')).toBe('4071');
    expect(digitsJoined('treinta y cinco uno coma cuatro')).toBe('treinta y cinco uno coma cuatro');
    expect(digitsJoined('ciento cinco uno coma cuatro')).toBe('ciento cinco uno coma cuatro');
  });
});
