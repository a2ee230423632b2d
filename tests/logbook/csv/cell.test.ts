// Contract of a number in a cell that ends with its mark.
import { expect, test } from 'vitest';
import { readCellNumber } from '../../../src/logbook/csv/cell.ts';

test('a comma needs a digit after it, a point does not', () => {
  expect([readCellNumber('5,'), readCellNumber('5.')]).toEqual([
    { ok: false, fault: { is: 'no number', cell: '5,' } },
    { ok: true, value: 5 },
  ]);
});
