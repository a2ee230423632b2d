// Contract of the reasons to measure again: each from the very limit on, with its date, the longest due first.
import { describe, expect, test } from 'vitest';
import { dueAgain, USUAL_LIMITS, type DueReason, type Limits, type Today } from '../../src/logbook/due.ts';
import { unknownConditions } from '../../src/logbook/conditions.ts';
import { historiesOf } from '../../src/logbook/history.ts';
import { moment } from '../../src/units.ts';
import { DAY, libraryWith, sweepRecord, T0, type Parts } from './libraryWith.ts';

const at = (days: number) => moment(T0 + days * DAY);
const warm = (temperature: number) => ({ ...unknownConditions(moment(0)), temperature });
const swept = (id: string, day: number, low: number, high: number, more: object = {}) => sweepRecord(id, at(day), low, high, { ...more });

function due(parts: Parts, today: Partial<Today> = {}, limits: Partial<Limits> = {}): DueReason[] {
  const library = libraryWith(parts);
  return dueAgain(historiesOf(library).get('s')!, library.notes, { at: at(30), temperature: null, ...today }, { ...USUAL_LIMITS, ...limits });
}

test('what was never measured nor entered is due for no reason', () => {
  expect(due({ notes: [{ id: 'n', at: at(3) }] }, { at: at(4000), temperature: 20 as never })).toEqual([]);
});

describe('age', () => {
  const records = [swept('r', 0, 2, 8)];
  test('is a reason from the day of the limit on, in whole days', () => {
    expect(due({ records }, { at: moment(at(365) - 1) })).toEqual([]);
    expect(due({ records }, { at: at(365) })).toEqual([{ why: 'age', since: at(365), days: 365 }]);
    expect(due({ records }, { at: moment(at(401) - 1) })).toEqual([{ why: 'age', since: at(365), days: 400 }]);
    expect(due({ records }, { at: at(10) }, { days: 10 })).toMatchObject([{ days: 10 }]);
  });

  test('counts from the last sweep, and where there is none from what was entered', () => {
    expect(due({ records: [...records, swept('again', 100, 2, 8)] }, { at: at(400) })).toEqual([]);
    expect(due({ entries: [{ id: 'e', at: at(5), value: 3 }] }, { at: at(370) })).toEqual([{ why: 'age', since: at(370), days: 365 }]);
    expect(due({ records, entries: [{ id: 'e', at: at(300), value: 5 }] }, { at: at(365) })).toMatchObject([{ why: 'age' }]);
  });
});

test('a note is a reason where it came after the measurement', () => {
  const records = [swept('r', 2, 2, 8)];
  const note = (day: number) => ({ id: 'n', at: at(day), of: 'b', what: 'firmware', note: '1.2' });
  expect(due({ records, notes: [note(2)] })).toEqual([]);
  expect(due({ records, notes: [note(3)] })).toEqual([{ why: 'firmware', since: at(3), note: '1.2' }]);
});

describe('warmth', () => {
  const entries = [{ id: 'e', at: at(0), value: 5, conditions: warm(20) }];
  test('is a reason from the limit on, colder as warmer', () => {
    expect(due({ entries }, { temperature: 34 as never })).toEqual([]);
    expect(due({ entries }, { temperature: 35 as never })).toEqual([{ why: 'temperature', since: at(30), before: 20, now: 35 }]);
    expect(due({ entries }, { temperature: 5 as never })).toMatchObject([{ before: 20, now: 5 }]);
    expect(due({ entries }, { temperature: 6 as never })).toEqual([]);
  });

  test('needs to be known of both days', () => {
    expect(due({ entries })).toEqual([]);
    expect(due({ records: [swept('r', 0, 2, 8)] }, { temperature: 40 as never })).toEqual([]);
  });
});

describe('a value that a later sweep does not hold', () => {
  const entry = (value: number, day = 1) => [{ id: 'e', at: at(day), value }];
  test.each([
    ['the lowest that held', 2, []],
    ['below it', 1, [{ why: 're-check', since: at(3), value: 1 }]],
    ['the highest that held', 8, []],
    ['above it', 9, [{ why: 're-check', since: at(3), value: 9 }]],
  ])('%s', (_, value, reasons) => {
    expect(due({ records: [swept('r', 3, 2, 8)], entries: entry(value) })).toEqual(reasons);
  });

  test('a sweep of the same moment or before says nothing of it, nor does what a hand wrote', () => {
    expect(due({ records: [swept('r', 1, 2, 8)], entries: entry(15) })).toEqual([]);
    expect(due({ byHand: [{ id: 'h', at: at(3), finding: { known: 'value', chosen: 0 } }], entries: entry(15) })).toEqual([]);
  });
});

describe('a drift', () => {
  // Intervals of half a step to either side: two together allow one step.
  const after = (low: number, high: number) => [swept('r', 0, 2, 8), swept('s2', 5, low, high)];
  test('is a reason from the limit on, up as down', () => {
    expect(due({ records: after(4, 11) })).toEqual([]);
    expect(due({ records: after(5, 11) })).toEqual([{ why: 'drift', since: at(5), apart: 3 }]);
    expect(due({ records: after(-1, 5) })).toMatchObject([{ apart: 3 }]);
  });

  test('must be more than both intervals allow', () => {
    expect(due({ records: after(3, 9) }, {}, { steps: 1 })).toEqual([]);
    expect(due({ records: after(4, 9) }, {}, { steps: 1 })).toMatchObject([{ apart: 1.5 }]);
  });

  test('is between the last two, of three', () => {
    expect(due({ records: [swept('first', -9, 12, 18), ...after(2, 8)] })).toEqual([]);
  });
});

test('the longest due comes first', () => {
  const parts = {
    records: [swept('r', 0, 2, 8), swept('t', 3, 12, 18)],
    entries: [{ id: 'e', at: at(1), value: 5 }],
    notes: [{ id: 'n', at: at(4), of: 'b' }],
  };
  expect(due(parts, { at: at(400) }).map(({ why, since }) => [why, (since - T0) / DAY])).toEqual([
    ['re-check', 3],
    ['drift', 3],
    ['service', 4],
    ['age', 368],
  ]);
});
