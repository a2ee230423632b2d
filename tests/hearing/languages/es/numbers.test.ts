// Contract of numbers in Spanish, where it differs from other languages: accents that are left out, words run together, homophones.
import { describe, expect, test } from 'vitest';
import { SPANISH } from '../../../../src/hearing/languages/es/spanish.ts';
import { sayCorrection } from '../../../../src/hearing/languages/es/sayCorrection.ts';
import { numberWordsIn } from '../../../../src/logbook/search/numberWords.ts';
import { hearingIn, shortly } from '../heard.ts';
import { wordsAt } from '../moments.ts';

const { numbers } = SPANISH;
const { heard } = hearingIn(SPANISH);
const { inFigures, digitsJoined } = numberWordsIn(numbers);
const LARGEST = 50;
const SIGNED = Array.from({ length: 2 * LARGEST + 1 }, (_, at) => at - LARGEST).filter((value) => value !== 0);
const DIALLING = wordsAt('dialling');
const told = (text: string) => heard(text, DIALLING, LARGEST);
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

  test('is taken as itself without its accents', () => {
    const taken = (value: number): string => `pon ${value < 0 ? '\u2212' : '+'}${Math.abs(value)}`;
    expect(SIGNED.filter((value) => shortly(told(plainly(`Pon ${sayCorrection(value)}.`))) !== taken(value))).toEqual([]);
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

  test('is asked for again where its sign is missing', () => {
    expect(told('ponlo en siete').is).not.toBe('taken');
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
  test('is written in figures where its accents are left out', () => {
    const lengths = Array.from({ length: 793 }, (_, at) => at + 8);
    expect(lengths.filter((length) => inFigures(plainly(numbers.say(length))) !== String(length))).toEqual([]);
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
