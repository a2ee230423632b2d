// Contract of the calendar at its bounds: the ends of every month up to the year 9999, the last hour, minute and second there is, and
// the first moment of all. The platform's own dates are the reference.
import { describe, expect, test } from 'vitest';
import { isoOf, minutesEast, momentOf, readIso, type CivilTime } from '../src/calendar.ts';
import { moment } from '../src/units.ts';
import { orThrown } from './kept/orThrown.ts';

const NOON: CivilTime = { year: 2026, month: 3, day: 4, hour: 12, minute: 30, second: 15 };
const at = (time: Partial<CivilTime>, east = 0): number | null => momentOf({ ...NOON, ...time }, east);
const iso = (milliseconds: number): string => new Date(milliseconds).toISOString();

test('the first and the last days of months are read and written as the platform does, and so is the turn of February in every century', () => {
  const months = Array.from({ length: (12 * (10_000 - 1970)) / 5 }, (_, index) => Date.UTC(1970, 5 * index, 1));
  const centuries = Array.from({ length: 80 }, (_, index) => Date.UTC(2000 + 100 * index, 2, 1));
  const days = [...months, ...centuries].flatMap((first) => [first, first - 86_400_000]).filter((day) => day >= 0);
  const wrong = days.filter((day) => isoOf(moment(day), 'day') !== iso(day).slice(0, 10) || readIso(iso(day).slice(0, 10)) !== day);
  expect(wrong).toEqual([]);
});

test('every day of a leap year and of a common one is itself', () => {
  const days = Array.from({ length: 731 }, (_, index) => Date.UTC(2027, 0, 1 + index));
  expect(days.map((day) => isoOf(moment(day), 'day'))).toEqual(days.map((day) => iso(day).slice(0, 10)));
  expect(days.map((day) => readIso(isoOf(moment(day))))).toEqual(days);
});

test('a month has its days and not one more', () => {
  const last = (year: number, month: number) => [28, 29, 30, 31, 32].filter((day) => at({ year, month, day }) !== null).at(-1);
  expect(Array.from({ length: 12 }, (_, index) => last(2026, index + 1))).toEqual([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]);
  expect([1972, 2000, 2024, 2100, 2200, 2400].map((year) => last(year, 2))).toEqual([29, 29, 29, 28, 28, 29]);
  expect([at({ day: 0 }), at({ month: 0 }), at({ month: 13 }), at({ year: 10_000 })]).toEqual([null, null, null, null]);
  expect(at({ year: 9999, month: 12, day: 31 })).toBe(Date.UTC(9999, 11, 31, 12, 30, 15));
});

test('a day ends with 23:59:59', () => {
  expect([at({ hour: 23 }), at({ hour: 24 }), at({ minute: 59 }), at({ minute: 60 }), at({ second: 59 }), at({ second: 60 })]).toEqual([
    Date.UTC(2026, 2, 4, 23, 30, 15),
    null,
    Date.UTC(2026, 2, 4, 12, 59, 15),
    null,
    Date.UTC(2026, 2, 4, 12, 30, 59),
    null,
  ]);
});

describe('the beginning of 1970', () => {
  test('is the first moment there is, wherever it was told', () => {
    expect([readIso('1970-01-01'), readIso('1969-12-31T23:30-01:00'), readIso('1970-01-01T01:00+01:00')]).toEqual([0, 1_800_000, 0]);
    expect([readIso('1969-12-31T23:59:59.999Z'), readIso('1970-01-01T00:59+01:00')]).toEqual([null, null]);
  });
});

test('milliseconds are written where there are any, with three digits', () => {
  expect([0, 1, 45, 999, 1000, 61_007.9].map((milliseconds) => isoOf(moment(milliseconds)))).toEqual([
    '1970-01-01T00:00:00Z',
    '1970-01-01T00:00:00.001Z',
    '1970-01-01T00:00:00.045Z',
    '1970-01-01T00:00:00.999Z',
    '1970-01-01T00:00:01Z',
    '1970-01-01T00:01:01.007Z',
  ]);
  expect(momentOf(NOON, 0, 7)).toBe(Date.UTC(2026, 2, 4, 12, 30, 15, 7));
});

test('every part of a date and time is read in its place', () => {
  expect(readIso('2026-03-04T05:06:07.089Z')).toBe(Date.UTC(2026, 2, 4, 5, 6, 7, 89));
  expect(readIso(' 2026-03-04 05:06:07-03:30 ')).toBe(Date.UTC(2026, 2, 4, 8, 36, 7));
  expect(readIso('2026-03-04T05:06+99:00')).toBe(Date.UTC(2026, 2, 4, 5, 6));
});

test('a zone reaches 14 hours and 59 minutes, and what is none is told as none', () => {
  expect(['+14:59', '-14:00', '+1500', '+02:60', 'CET', ''].map((zone) => orThrown(() => minutesEast(zone)))).toEqual([899, -840, null, null, null, null]);
  expect(orThrown(() => readIso('no date'))).toBeNull();
});
