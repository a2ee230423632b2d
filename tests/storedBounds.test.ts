// Contract of what is stored straight under the panel's root: units and settings fit up to their bounds and not beyond, languages and work in
// steps are as they say.
import * as v from 'valibot';
import { expect, test } from 'vitest';
import { countryAmong, isDistances } from '../src/country.ts';
import { isLanguage, languageAmong, languagesFor, LANGUAGES } from '../src/language.ts';
import { Settings } from '../src/settings.ts';
import { atOnce, type HowFar } from '../src/stepwise.ts';
import { Millimetres, Moment, Seconds, Steps } from '../src/storedUnits.ts';
import { between, moment } from '../src/units.ts';
import { USUAL_SETTINGS } from '../src/usualSettings.ts';
import { orThrown } from './kept/orThrown.ts';

test('corrections reach 200 either way, lengths and times begin at nought', () => {
  const fits = (schema: v.GenericSchema, ...values: number[]) => values.map((value) => v.safeParse(schema, value).success);
  expect(fits(Steps, -201, -200, 0, 0.5, 200, 201)).toEqual([false, true, true, false, true, false]);
  for (const schema of [Seconds, Moment, Millimetres]) expect(fits(schema, -0.001, 0, 0.5, 1e12, Infinity)).toEqual([false, true, true, true, false]);
});

test('no time runs backwards', () => {
  expect([between(moment(1000), moment(3500)), between(moment(1000), moment(1000)), between(moment(2000), moment(1000))]).toEqual([2.5, 0, 0]);
  expect(between(moment(1000), moment(1400))).toBe(0.4);
});

test('settings fit up to their bounds', () => {
  const fits = (more: object) => v.safeParse(Settings, { ...USUAL_SETTINGS, ...more }).success;
  const voice = (more: object) => fits({ voice: { ...USUAL_SETTINGS.voice, ...more } });
  const logbook = (more: object) => fits({ logbook: { ...USUAL_SETTINGS.logbook, ...more } });
  expect([0.49, 0.5, 2, 2.01].map((rate) => voice({ rate }))).toEqual([false, true, true, false]);
  expect([6, 7, 7.5, 3650, 3651].map((days) => logbook({ days }))).toEqual([false, true, false, true, false]);
  expect([0, 1, 60, 61].map((length) => logbook({ sync: 'x'.repeat(length) }))).toEqual([false, true, true, false]);
  expect([-1, 0, 1].map((coached) => fits({ coached }))).toEqual([false, true, true]);
  const hold = { shown: 'dark', told: 'dark', level: 1 };
  const round = { at: 5, level: 1, holds: Array.from({ length: 10 }, () => hold) };
  expect([20, 21].map((count) => fits({ training: { rounds: Array.from({ length: count }, () => round), own: false } }))).toEqual([true, false]);
});

test('a loudness beyond its bounds is the loudest', () => {
  const loudness = (value: number) => v.parse(Settings, { ...USUAL_SETTINGS, loudness: value }).loudness;
  expect([-0.1, 0, 0.3, 1, 1.1].map(loudness)).toEqual([1, 0, 0.3, 1, 1]);
});

test('the first liked language that is there is written, and English where none is', () => {
  expect([['de-AT'], ['xx', 'FR_ca', 'es'], ['ja'], [''], []].map(languageAmong)).toEqual(['de', 'fr', 'ja', 'en', 'en']);
  expect([...LANGUAGES.map(isLanguage), isLanguage('xx'), isLanguage('EN')]).toEqual([true, true, true, true, true, false, false]);
  expect([languagesFor({ screens: 'browser', voice: 'screens' }, ['es']), languagesFor({ screens: 'fr', voice: 'ja' }, ['es'])]).toEqual([
    { screens: 'es', voice: 'es' },
    { screens: 'fr', voice: 'ja' },
  ]);
});

test('distances are told as three names say', () => {
  expect(['country', 'm', 'ft', 'yd', ''].map(isDistances)).toEqual([true, true, true, false, false]);
  expect(orThrown(() => countryAmong(['no tag at all', 'en-US']))).toEqual({ unit: 'ft', paper: 'Letter' });
});

test('work in steps gives at once what it gives in the end', () => {
  function* work(): Generator<HowFar, string, void> {
    yield { done: 1, of: 2 };
    yield { done: 2, of: 2 };
    return 'done';
  }
  expect(atOnce(work())).toBe('done');
});
