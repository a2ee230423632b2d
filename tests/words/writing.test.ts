// Contract of how a language writes numbers, dates, lists and plurals (CLDR by way of Intl; forms of English from memory).
import { expect, test } from 'vitest';
import { lengthsIn } from '../../src/optics/writtenLength.ts';
import { numbersIn } from '../../src/optics/writtenNumber.ts';
import { millimetres, moment, seconds } from '../../src/units.ts';
import { write as french } from '../../src/words/fr/write.ts';
import { write as japanese } from '../../src/words/ja/write.ts';
import { writing } from '../../src/words/writing.ts';

const english = writing('en-GB');
const german = writing('de');

test('a number has a true minus, its sign where that matters, and no digits that say nothing', () => {
  expect([english.number(-3), english.number(4.25, 1), english.signed(2), english.signed(-0.5, 1), english.signed(-0)]).toEqual([
    '\u22123',
    '4.3',
    '+2',
    '\u22120.5',
    '0',
  ]);
  expect([english.signed(2.75, 1), english.signed(-0.5, 1), english.signed(0.04, 1)]).toEqual(['+2.8', '\u22120.5', '0']);
  expect(german.number(4.25, 2)).toBe('4,25');
});

test('a chance is rounded down and never all', () => {
  expect([english.chance(0.979), english.chance(0.9999), english.chance(1)]).toEqual(['97%', '99%', '99%']);
});

test('lengths and times carry their unit, as fine as they matter', () => {
  expect([english.distance(millimetres(4250)), english.distance(millimetres(12_340)), english.millimetres(millimetres(85))]).toEqual([
    '4.25\u00a0m',
    '12.3\u00a0m',
    '85\u00a0mm',
  ]);
  expect([english.duration(seconds(40)), english.duration(seconds(125)), english.duration(seconds(4200))]).toEqual([
    '40\u00a0secs',
    '2\u00a0mins 5\u00a0secs',
    '1\u00a0hr 10\u00a0mins',
  ]);
  expect([english.duration(seconds(43)), english.duration(seconds(103)), english.duration(seconds(3600)), english.duration(seconds(5430))]).toEqual([
    '43\u00a0secs',
    '1\u00a0min 43\u00a0secs',
    '1\u00a0hr 0\u00a0mins',
    '1\u00a0hr 30\u00a0mins',
  ]);
});

test('two limits are written as fine as it takes to tell them apart, and as one where nothing does', () => {
  const limits = (near: number, far: number): readonly string[] => english.distances(millimetres(near), millimetres(far), 'm');
  expect(limits(9810, 10_200)).toEqual(['9.81\u00a0m', '10.2\u00a0m']);
  expect(limits(9996, 10_004)).toEqual(['9.996\u00a0m', '10.004\u00a0m']);
  expect(limits(299.6, 300.4)).toEqual(['0.2996\u00a0m', '0.3004\u00a0m']);
  expect(limits(300, 300)).toEqual(['0.3\u00a0m']);
  expect(german.distances(millimetres(123_410), millimetres(123_440), 'm')).toEqual(['123,41\u00a0m', '123,44\u00a0m']);
});

test('a day is written in the language of the sentence, whatever the browser speaks', () => {
  const when = moment(Date.UTC(2026, 10, 28, 12));
  expect([english.day(when), german.day(when)]).toEqual(['28\u00a0Nov\u00a02026', '28.\u00a0Nov.\u00a02026']);
});

test('the first of a month is an ordinal in French, and no other day is', () => {
  const [first, eleventh] = [1, 11].map((day) => moment(new Date(2026, 2, day, 9, 5, 7).getTime()));
  if (first === undefined || eleventh === undefined) throw new Error('Two days are asked for.');
  expect([french.day(first), french.day(eleventh)]).toEqual(['1er\u00a0mars\u00a02026', '11\u00a0mars\u00a02026']);
  expect([french.dayAndTime(first), french.dayAndSecond(first)]).toEqual(['1er\u00a0mars\u00a02026, 9:05', '1er\u00a0mars\u00a02026, 9:05:07']);
});

test('a date with its seconds begins as every date of its language', () => {
  const when = moment(new Date(2026, 10, 28, 9, 5, 7).getTime());
  for (const { day, dayAndTime, dayAndSecond } of [english, german, french, japanese]) {
    expect(dayAndTime(when).startsWith(day(when))).toBe(true);
    expect(dayAndSecond(when)).toBe(`${dayAndTime(when)}:07`);
  }
  expect(japanese.dayAndSecond(when)).toBe('2026年11月28日 9:05:07');
});

test('Japanese puts no space between a number and a counter, and one before the letters of a unit', () => {
  expect([japanese.unit(5, 'second'), japanese.degrees(1.5, 1), japanese.duration(seconds(4200))]).toEqual(['5秒', '1.5°', '1時間10分']);
  expect([japanese.distance(millimetres(4250)), japanese.millimetres(millimetres(85))]).toEqual(['4.25\u00a0m', '85\u00a0mm']);
});

test('what may be typed instead can mean nothing else, and is written with the decimals of the language', () => {
  for (const { typed, typedLength } of [english, german, french, japanese]) {
    for (const value of [1, 1.25, 1.234, 12.345, 0.03, 1250, 50_000]) {
      expect(numbersIn(typed(value))).toEqual([value]);
      expect(lengthsIn(typedLength([{ value, unit: 'ft' }]), 'm').map((one) => one.millimetres)).toEqual([value * 304.8]);
    }
    expect(
      lengthsIn(
        typedLength([
          { value: 5, unit: 'ft' },
          { value: 9, unit: 'in' },
        ]),
        'm',
      ).map((one) => one.millimetres),
    ).toEqual([1752.6]);
  }
  expect([english.typed(1.25), german.typed(1.25), german.typed(1.234), german.typed(1250)]).toEqual(['1.25', '1,25', '1,2340', '1250']);
  expect(german.typedLength([{ value: 1.25, unit: 'ft' }])).toBe('1,25\u00a0ft');
});

test('lists and plurals follow the language', () => {
  expect([english.list(['a', 'b', 'c']), english.choice(['a', 'b']), german.list(['a', 'b', 'c'])]).toEqual(['a, b and c', 'a or b', 'a, b und c']);
  const holds = { one: '# hold', other: '# holds' };
  expect([english.count(1, holds), english.count(0, holds), english.count(1200, holds)]).toEqual(['1 hold', '0 holds', '1,200 holds']);
  const steps = { one: '# step', other: '# steps' };
  expect([english.count(1.04, steps, 1), english.count(0.4, steps, 1), english.count(2.25, steps, 1)]).toEqual(['1 step', '0.4 steps', '2.3 steps']);
});
