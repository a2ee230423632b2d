import { expect, test } from 'vitest';
import { timeSpent } from '../../src/sweep/timeSpent.ts';
import { moment } from '../../src/units.ts';

const at = (...seconds: readonly number[]) => seconds.map((second) => moment(second * 1000));

test('the time of a sweep runs from its first event to now', () => {
  expect(timeSpent(at(100, 110, 125), moment(130_000))).toBe(30);
});

test('a break of hours between two events is not the time of the sweep', () => {
  expect(timeSpent(at(100, 110, 40_000, 40_010), moment(40_020_000))).toBe(30);
});

test('a clock that was set back takes no time away', () => {
  expect(timeSpent(at(100, 50), moment(60_000))).toBe(10);
});
