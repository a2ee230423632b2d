// Rows that a logbook gives and that a table adds to it, kept for measurements, entries and photographs of every kind.
import { expect, test } from 'vitest';
import { photographFields } from '../../../src/logbook/csv/photographed.ts';
import { planTable } from '../../../src/logbook/csv/planTable.ts';
import { EMPTY_ROW } from '../../../src/logbook/csv/readTable.ts';
import { tableRowsOf, type Row } from '../../../src/logbook/csv/row.ts';
import { WITH_COMMAS, WITH_SEMICOLONS } from '../../../src/logbook/csv/style.ts';
import { writeRows, writeTable } from '../../../src/logbook/csv/writeTable.ts';
import { moment } from '../../../src/units.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { library } from './fullLibrary.ts';

test('the rows of a logbook, and its table', () => {
  expect(tableRowsOf(library).map((row) => oneLine(Object.entries(row).filter(([, value]) => value !== null)))).toMatchSnapshot('rows');
  expect([WITH_COMMAS, WITH_SEMICOLONS].map((style) => writeTable(library, style))).toMatchSnapshot('tables');
  expect(writeRows([], WITH_SEMICOLONS).split(';')).toHaveLength(36);
  expect(library.proofs.map((record) => oneLine(photographFields(record)))).toMatchSnapshot('photographs');
});

const ROW: Row = { ...EMPTY_ROW, body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: 85, distance: 4250, value: 4 };

test('what each line of a table adds, or what is wrong with it', () => {
  const rows: readonly Partial<Row>[] = [
    {},
    { id: 'h' },
    { id: 'r', value: null },
    { value: null },
    { value: null, low: 1 },
    { value: null, high: 1 },
    { value: null, low: -5, high: 2 },
    { low: -5, high: 2 },
    { low: 2, value: 3 },
    { kind: 'entered', value: null, low: 1, high: 2 },
    { kind: 'entered' },
    { kind: 'by hand', at: moment(9) },
    { kind: 'from another computer' },
    { kind: 'sweep', light: 5, temperature: 61 },
    { kind: 'check of a value' },
    { value: 1.5 },
    { low: 0.5, high: 3 },
    { low: 0, high: 300 },
    { value: 201 },
    { body: ' velde   m2 ' },
    { body: 'other', bodySerial: '11' },
    { body: 'Velde M1', bodySerial: '12' },
    { body: 'Velde  M2', bodySerial: '12' },
    { lens: 'Orrin 50', lensSerial: 'new' },
    { lens: 'ORRIN 50', lensSerial: null },
    { lens: 'other', lensSerial: 'L1' },
    { converter: 'orrin 1.4×', lens: 'Orrin 50' },
    { converter: 'none such' },
    { body: '' },
    { lens: 'x'.repeat(61) },
    { focalLength: 3 },
    { distance: 1 },
    { note: 'x'.repeat(2001) },
    { focalLength: 50, distance: 2500 },
  ];
  const told = rows.map((row) => {
    const plan = planTable(library, { rows: [{ line: 2, row: { ...ROW, ...row } }], faults: [{ line: 1, column: null, fault: { is: 'empty' } }] }, moment(77));
    const added = [...plan.library.byHand.slice(2), ...plan.library.entries.slice(2)];
    return oneLine([
      plan.added,
      plan.same,
      plan.withoutValue,
      plan.newKit.join(),
      plan.faults.slice(1),
      added,
      plan.library.kit.situations.slice(2).map(({ id, body, lens }) => [id, body, lens]),
    ]);
  });
  expect(told).toMatchSnapshot('one by one');
  const all = planTable(library, { rows: [...rows, ...rows].map((row, at) => ({ line: 90 - at, row: { ...ROW, ...row } })), faults: [] }, moment(77));
  expect(
    oneLine([
      all.added,
      all.same,
      all.withoutValue,
      all.newKit,
      all.faults.map(({ line, column }) => `${line} ${String(column)}`),
      Object.values(all.library.kit).map((items) => items.length),
    ]),
  ).toMatchSnapshot('together');
});
