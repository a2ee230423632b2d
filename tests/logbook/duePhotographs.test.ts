// Contract of photographs as a reason to measure again: a shift that a check found, for as long as nothing newer speaks for the value.
import { expect, test } from 'vitest';
import { dueAgain, USUAL_LIMITS, type DueReason } from '../../src/logbook/due.ts';
import { historiesOf } from '../../src/logbook/history.ts';
import { words } from '../../src/words/en/logbook.ts';
import { moment } from '../../src/units.ts';
import { DAY, libraryWith, sweepRecord, T0, type Parts } from './libraryWith.ts';

const at = (days: number) => moment(T0 + days * DAY);

const SHIFTED = {
  is: 'check',
  taken: null,
  correction: 5,
  shots: 6,
  reference: true,
  bias: { value: 14, low: 12, high: 16 },
  repeatability: 1,
  nearLessFar: null,
  depth: { front: 20, behind: 22 },
  verdict: { is: 'shifted', lies: 'behind' },
};
const CONFIRMED = { ...SHIFTED, bias: { value: 1, low: -1, high: 3 }, verdict: { is: 'confirmed' } };
const NOT_ENOUGH = { ...SHIFTED, verdict: { is: 'not enough', more: 2 } };
const shifted = { id: 'p', at: at(2), proof: SHIFTED };

const SWEPT = sweepRecord('r', T0, 2, 9);
const ENTERED = { id: 'e', at: at(1), value: 5 };

function due(parts: Parts): DueReason[] {
  const library = libraryWith({ records: [SWEPT], entries: [ENTERED], ...parts });
  return dueAgain(historiesOf(library).get('s')!, library.notes, { at: at(30), temperature: null }, USUAL_LIMITS);
}

test('a shift found by the newest check of the value to go by that could tell is a reason', () => {
  const reason = { why: 'photographs', since: at(2), value: 5, bias: SHIFTED.bias };
  expect(due({ proofs: [shifted] })).toEqual([reason]);
  expect(due({ proofs: [shifted, { id: 'q', at: at(3), proof: NOT_ENOUGH }] })).toEqual([reason]);
  expect(due({ proofs: [shifted], entries: [] })).toEqual([reason]);
});

test('it is none any more once another check confirms the value, another value is entered, or a sweep is made', () => {
  expect(due({ proofs: [shifted, { id: 'q', at: at(3), proof: CONFIRMED }] })).toEqual([]);
  expect(due({ proofs: [shifted], entries: [ENTERED, { id: 'f', at: at(3), value: 8 }] })).toEqual([]);
  expect(due({ proofs: [shifted], records: [SWEPT, sweepRecord('again', at(4), 2, 9)] })).toEqual([]);
});

test('a check of another value, of too few shots, or with the practice camera is none', () => {
  expect(due({ proofs: [{ ...shifted, proof: { ...SHIFTED, correction: 4 } }] })).toEqual([]);
  expect(due({ proofs: [{ ...shifted, proof: NOT_ENOUGH }] })).toEqual([]);
  expect(due({ proofs: [{ ...shifted, practice: true }] })).toEqual([]);
});

test('it counts from when the pictures were taken, and its sentence says at which value and where focus fell', () => {
  const [reason] = due({ proofs: [{ ...shifted, at: at(9), proof: { ...SHIFTED, taken: at(6) } }] });
  expect(reason?.since).toBe(at(6));
  expect(reason && words.due(reason)).toBe('Photographs showed a shift: at +5, focus fell 14\u00a0mm ± 2\u00a0mm behind the target.');
});
