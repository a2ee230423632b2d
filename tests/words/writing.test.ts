// Contract of how a language writes numbers, dates, lists and plurals (CLDR by way of Intl; forms of English from memory).
import { expect, test } from 'vitest';
import { millimetres, moment, seconds } from '../../src/units.ts';
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
  expect([english.metres(millimetres(4250)), english.metres(millimetres(12_340)), english.millimetres(millimetres(85))]).toEqual(['4.25 m', '12.3 m', '85 mm']);
  expect([english.duration(seconds(40)), english.duration(seconds(125)), english.duration(seconds(4200))]).toEqual([
    '40 secs',
    '2 mins 5 secs',
    '1 hr 10 mins',
  ]);
  expect([english.duration(seconds(43)), english.duration(seconds(103)), english.duration(seconds(3600)), english.duration(seconds(5430))]).toEqual([
    '43 secs',
    '1 min 43 secs',
    '1 hr 0 mins',
    '1 hr 30 mins',
  ]);
});

test('a day is written in the language of the sentence, whatever the browser speaks', () => {
  const when = moment(Date.UTC(2026, 10, 28, 12));
  expect([english.day(when), german.day(when)]).toEqual(['28 Nov 2026', '28. Nov. 2026']);
});

test('lists and plurals follow the language', () => {
  expect([english.list(['a', 'b', 'c']), english.choice(['a', 'b']), german.list(['a', 'b', 'c'])]).toEqual(['a, b and c', 'a or b', 'a, b und c']);
  const holds = { one: '# hold', other: '# holds' };
  expect([english.count(1, holds), english.count(0, holds), english.count(1200, holds)]).toEqual(['1 hold', '0 holds', '1,200 holds']);
  const steps = { one: '# step', other: '# steps' };
  expect([english.count(1.04, steps, 1), english.count(0.4, steps, 1), english.count(2.25, steps, 1)]).toEqual(['1 step', '0.4 steps', '2.3 steps']);
});
