// Contract of the reminder on the start: earned by five new records or by 30 days, quiet for as long again once it was put off.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { earnedReminder } from '../../src/logbook/backup/earned.ts';
import { moment } from '../../src/units.ts';
import { DAY, libraryWith, sweepRecord, T0 } from './libraryWith.ts';

const day = (days: number) => moment(T0 + days * DAY);
const measuredOn = (...days: readonly number[]) => libraryWith({ records: days.map((one, at) => sweepRecord(`r${at}`, day(one), -2, 2)) });
const FIVE = [1, 2, 3, 4, 5];

test('without a backup five records earn it, and four do not until the first of them is 30 days old', () => {
  expect(earnedReminder(measuredOn(...FIVE), null, null, day(6))).toBe(5);
  expect(earnedReminder(measuredOn(1, 2, 3, 4), null, null, day(30))).toBeNull();
  expect(earnedReminder(measuredOn(1, 2, 3, 4), null, null, day(31))).toBe(4);
});

test('after a backup five new records earn it, or one and 30 days', () => {
  const library = measuredOn(-9, -8, ...FIVE);
  expect(earnedReminder(library, day(0), null, day(6))).toBe(5);
  expect(earnedReminder(library, day(1), null, day(30))).toBeNull();
  expect(earnedReminder(measuredOn(20), day(0), null, day(29))).toBeNull();
  expect(earnedReminder(measuredOn(20), day(0), null, day(30))).toBe(1);
});

test('put off, it waits for five more records or 30 more days, and then counts all that no backup holds', () => {
  expect(earnedReminder(measuredOn(...FIVE), null, day(6), day(35))).toBeNull();
  expect(earnedReminder(measuredOn(...FIVE), null, day(6), day(36))).toBe(5);
  expect(earnedReminder(measuredOn(...FIVE, 7, 8, 9, 10), day(0), day(6), day(11))).toBeNull();
  expect(earnedReminder(measuredOn(...FIVE, 7, 8, 9, 10, 11), day(0), day(6), day(12))).toBe(10);
});

test('a backup holds what was measured at its very moment, and what was measured when it was put off is not new', () => {
  expect(earnedReminder(measuredOn(1, 1, 1, 1, 1), day(1), null, day(400))).toBeNull();
  expect(earnedReminder(measuredOn(6, 7, 8, 9, 10), day(0), day(6), day(11))).toBeNull();
  expect(earnedReminder(measuredOn(6, 7, 8, 9, 10, 11), day(0), day(6), day(12))).toBe(6);
});

test('a backup after it was put off begins anew', () => {
  expect(earnedReminder(measuredOn(...FIVE, 9), day(8), day(6), day(10))).toBeNull();
});

test('a value put in by hand counts, a sweep of the practice camera does not', () => {
  const library = libraryWith({
    records: FIVE.map((at) => sweepRecord(`p${at}`, day(at), -2, 2, { practice: true })),
    byHand: [{ id: 'h', at: day(1) }],
  });
  expect(earnedReminder(library, null, null, day(30))).toBeNull();
  expect(earnedReminder(library, null, null, day(31))).toBe(1);
});

test('whatever was measured, a backup of this moment and nothing since says nothing for good', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(400), { maxLength: 9 }), fc.option(fc.nat(400), { nil: null }), fc.nat(4000), (days, putOff, later) => {
      const off = putOff === null ? null : day(putOff);
      expect(earnedReminder(measuredOn(...days), day(400), off, day(400 + later))).toBeNull();
    }),
  );
});
