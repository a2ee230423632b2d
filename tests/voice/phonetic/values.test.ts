// Contract of the values: how far what was heard is from a value, nearest first, and when it is doubtful. The language is made up, so
// that every distance but the sounds' own is one of those that the rules name.
import { expect, test } from 'vitest';
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';
import { courtesyIn } from '../../../src/voice/phonetic/courtesy.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { valuesIn } from '../../../src/voice/phonetic/values.ts';
import { INVENTED } from '../../hearing/languages/invented.ts';

const language: HeardLanguage = INVENTED;
const pronounce = pronouncer(language.pronunciation);
const values = valuesIn(language, pronounce, courtesyIn(language, pronounce));
const heard = (text: string, largest = 20) => values(text.split(' '), largest);

test.each([
  ['as it is taught', 'kotu dupi bele', 2],
  ['the other sign', 'kotu haro foso', -4],
  ['with another opening', 'kotu la haro foso', -4],
])('%s: "%s" is %i, with nothing between', (_, text, value) => {
  expect(heard(text)[0]).toEqual({ value, apart: 0, doubtful: false });
});

test('without an opening it is nearly as good: 0.4 of 0.02', () => {
  const [first] = heard('haro foso');
  expect(first).toMatchObject({ value: -4, doubtful: false });
  expect(first?.apart).toBeCloseTo(0.008, 9);
});

test('courtesy around it costs a little', () => {
  const [first] = heard('eh haro foso');
  expect(first).toMatchObject({ value: -4, doubtful: false });
  expect(first?.apart).toBeCloseTo(0.028, 9);
});

test('the nearest comes first', () => {
  const found = heard('kotu dupi nimo');
  expect(found.map(({ value }) => value)).toContain(9);
  expect(found.map(({ apart }) => apart)).toEqual(found.map(({ apart }) => apart).sort((a, b) => a - b));
});

test('zero needs no sign but an opening, and has no sign of its own', () => {
  expect(heard('kotu nul')).toEqual([{ value: 0, apart: 0, doubtful: false }]);
  expect(heard('nul')).toEqual([]);
  expect(Object.is(heard('kotu haro nul')[0]?.value, 0)).toBe(true);
});

test('a number alone has no sign, and a sign alone no number', () => {
  expect(heard('kotu foso')).toEqual([]);
  expect(heard('kotu haro')).toEqual([]);
});

test('what no scale of this body has is not offered, not even by sound', () => {
  expect(heard('kotu dupi foso', 4)[0]).toEqual({ value: 4, apart: 0, doubtful: false });
  expect(heard('kotu dupi foso', 3).map(({ value }) => value)).not.toContain(4);
});

test('a number that is known to be taken for another is doubtful, and only where itself is not possible', () => {
  expect(heard('kotu dupi bele dek', 19)[0]).toEqual({ value: 12, apart: 0.2, doubtful: true });
  expect(heard('kotu dupi bele dek', 20)[0]).toEqual({ value: 20, apart: 0, doubtful: false });
  expect(heard('kotu dupi bele dek', 12)[0]).toEqual({ value: 12, apart: 0.2, doubtful: true });
  expect(heard('kotu dupi bele dek', 11)).toEqual([]);
});

test('a known spelling of a number is that number, right behind a sign', () => {
  expect(heard('kotu dupi gosling')[0]).toEqual({ value: 6, apart: 0, doubtful: false });
});

test('digit by digit is the whole number, and three digits are none', () => {
  expect(heard('kotu dupi ka bele')[0]).toEqual({ value: 12, apart: 0, doubtful: false });
  expect(heard('kotu dupi ka bele tiri')[0]?.apart ?? Infinity).toBeGreaterThan(0);
});

test('a word before it that is nothing like an opening leaves only what is exact, and that is doubtful', () => {
  const [exact] = heard('kota dupi foso');
  expect(exact).toMatchObject({ value: 4 });
  expect(exact?.apart).toBeGreaterThan(0);
  expect(heard('shifezu dupi foso')).toEqual([]);
});

test('four words before the sign are other talk', () => {
  expect(heard('kotu la dupi foso')).not.toEqual([]);
  expect(heard('kotu kotu kotu la dupi foso')).toEqual([]);
});

test('sign and opening run together are heard as both', () => {
  const [first] = heard('kotuharo foso');
  expect(first).toMatchObject({ value: -4, doubtful: false });
});
