// Cells and columns of tables as they are written and read, kept for every kind of field and at each mark that parts them.
import { expect, test } from 'vitest';
import { readCellNumber, readCellText, readMoment, writeCellNumber, writeMoment, writeText } from '../../../src/logbook/csv/cell.ts';
import { ALSO_READ, COLUMNS } from '../../../src/logbook/csv/columns.ts';
import { guessMapping, missingFrom, readRows, readTable } from '../../../src/logbook/csv/readTable.ts';
import { decimalIn, styleFor } from '../../../src/logbook/csv/style.ts';
import { moment } from '../../../src/units.ts';
import { oneLine } from '../../kept/oneLine.ts';

const DELIMITERS = [',', ';', '\t', '|'] as const;

test('numbers, texts and dates in a cell', () => {
  const cells = [
    '',
    '1',
    '-1',
    '+1',
    '−1',
    '1.5',
    '1,5',
    '.5',
    ',5',
    '5.',
    '1e3',
    '1,5e-2',
    '1,250',
    '1.250',
    '-1,250',
    '0,125',
    '0.125',
    '1,250,000',
    '1.250.000',
    '1,2,3',
    '1,250.5',
    ' 7 ',
    "'7",
    "'-7",
    "'=7",
    '1e999',
    'x',
    '12,5x',
  ];
  expect(cells.map((cell) => oneLine([cell, readCellNumber(cell), readCellNumber(cell, ',')]))).toMatchSnapshot('numbers');
  const texts = ['', '=1', ' =1', "'=1", "''=1", '@x', 'x=1', '-', '\tx', 'x\t', "'", "'x", '＝1'];
  expect(texts.map((text) => [text, writeText(text), readCellText(text), readCellText(writeText(text))].join(' → '))).toMatchSnapshot('texts');
  expect([writeCellNumber(-1.5, ','), writeCellNumber(-1.5, '.'), writeMoment(moment(86_400_000))]).toEqual(['-1,5', '-1.5', '1970-01-02T00:00:00Z']);
  expect(['2026-03-04', '2026-03-04T05:06:07Z', "'2026-03-04", '4.3.2026', ''].map((cell) => oneLine(readMoment(cell)))).toMatchSnapshot('dates');
});

test('how tables are written where', () => {
  expect([undefined, 'en', 'de', 'fr', 'ja', 'not_a_language'].map((language) => oneLine(styleFor(language)))).toMatchSnapshot();
  expect(DELIMITERS.map(decimalIn)).toEqual([null, ',', null, null]);
});

test('every column, its headings, and what it reads', () => {
  const cells = ['', ' ', 'x', '3', '1,5', '1,250', "'=1", '2026-03-04', 'Sweep', 'BAND', 'one picture', 'agree'];
  expect([...COLUMNS, ...ALSO_READ].map((column) => `${column.key} ${column.heading} ${String(column.needed)} ${column.also.join('|')}`)).toMatchSnapshot(
    'headings',
  );
  expect(
    [...COLUMNS, ...ALSO_READ].map(
      (column) =>
        `${column.heading}: ${cells
          .map((cell) => column.read(cell, ','))
          .map((read) => (read.ok ? String(read.value) : read.fault.is))
          .join('; ')}`,
    ),
  ).toMatchSnapshot('cells');
});

test('a table, its mapping, its rows and faults', () => {
  const tables = [
    '',
    'body,lens',
    'Body, LENS ,focal  length,distance (m),value,Value,odd\nA,B,85,4.25,3,4,5\n,B,85,4.25,3\nA,"\n",85,4,1\nA,B,x,4,1\nA,B,85,"1,250",1\nA,B,85',
    'body;lens;mm;distance (mm);value;temp\nA;B;85;4250;3;1,5\nA;B;85;4.250;3;1,5\nA;B;0;0;0;0',
    'sep=|\ncamera|objective|focal|m|min|max\nA|B|85|4|-1|3',
    'lens,value\nA,3',
  ];
  expect(
    tables.map((text) => {
      const table = readTable(text);
      if (!table.ok) return oneLine(table.fault);
      const mapping = guessMapping(table.value.headings);
      const { rows, faults } = readRows(table.value, mapping);
      const told = rows.map(({ line, row }) => [line, Object.entries(row).filter(([, value]) => value !== null)]);
      return oneLine([
        table.value.decimal,
        mapping.map((column) => column?.key ?? '-').join(),
        missingFrom(mapping)
          .map(({ key }) => key)
          .join(),
        told,
        faults,
      ]);
    }),
  ).toMatchSnapshot();
});

test('a table of a hundred thousand lines is read, and of one more is not', () => {
  const of = (lines: number) => readTable(`a\n${'b\n'.repeat(lines)}`);
  expect(of(100_000).ok).toBe(true);
  expect(of(100_001)).toEqual({ ok: false, fault: { is: 'too many lines', most: 100_000 } });
});
