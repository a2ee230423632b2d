// Reading a table of results, ours or a person's own: first which heading means what, shown before anything is taken,
// then line by line, every fault with its line and all of them at once.
import { failed, got, type Result } from '../../result.ts';
import { ALSO_READ, COLUMNS, type Column } from './columns.ts';
import { readCsv, type CsvLine } from './csv.ts';
import { delimiterOf } from './delimiter.ts';
import type { LineFault, TableFault } from './fault.ts';
import { NOT_PHOTOGRAPHED } from './photographed.ts';
import type { Row } from './row.ts';
import { decimalIn } from './style.ts';

export interface Table {
  readonly headings: readonly string[];
  readonly lines: readonly CsvLine[];
  /** What its numbers have, null where it may be either. */
  readonly decimal: ',' | null;
}

/** For each heading the column it means, or null for one that is passed over. */
export type Mapping = readonly (Column | null)[];

export interface ReadRows {
  readonly rows: readonly { readonly line: number; readonly row: Row }[];
  readonly faults: readonly LineFault[];
}

const MOST_LINES = 100_000;

export function readTable(text: string): Result<Table, TableFault> {
  const delimiter = delimiterOf(text);
  const lines = readCsv(text, delimiter);
  if (!lines.ok) return lines;
  const [headings, ...rest] = lines.value;
  if (!headings || rest.length === 0) return failed({ is: 'empty' });
  if (rest.length > MOST_LINES) return failed({ is: 'too many lines', most: MOST_LINES });
  return got({ headings: headings.cells, lines: rest, decimal: decimalIn(delimiter) });
}

/** The mapping that the headings themselves suggest; each column is meant once. */
export function guessMapping(headings: readonly string[]): Mapping {
  const taken = new Set<keyof Row>();
  return headings.map((heading) => {
    const wanted = plain(heading);
    const column = [...COLUMNS, ...ALSO_READ].find(({ key, heading: own, also }) => !taken.has(key) && (plain(own) === wanted || also.includes(wanted)));
    if (!column) return null;
    taken.add(column.key);
    return column;
  });
}

/** The needed columns that no heading stands for. */
export const missingFrom = (mapping: Mapping): Column[] => COLUMNS.filter(({ key, needed }) => needed && !mapping.some((column) => column?.key === key));

/** Reads every line by the mapping. A line with a fault is left out and reported; the others stand. */
export function readRows(table: Table, mapping: Mapping): ReadRows {
  const rows: { line: number; row: Row }[] = [];
  const faults: LineFault[] = [];
  for (const { line, cells } of table.lines) {
    const row = readRow(cells, mapping, table.decimal);
    if (row.ok) rows.push({ line, row: row.value });
    else faults.push({ line, ...row.fault });
  }
  return { rows, faults };
}

/** A row of which nothing is told. */
export const EMPTY_ROW: Row = {
  id: null,
  kind: 'from a table',
  at: null,
  body: '',
  bodySerial: null,
  lens: '',
  lensSerial: null,
  converter: null,
  focalLength: 0,
  distance: 0,
  found: null,
  low: null,
  high: null,
  centre: null,
  value: null,
  from: null,
  to: null,
  within: null,
  holds: null,
  seconds: null,
  light: null,
  temperature: null,
  firmware: null,
  note: null,
  ...NOT_PHOTOGRAPHED,
};

function readRow(cells: readonly string[], mapping: Mapping, decimal: Table['decimal']): Result<Row, Omit<LineFault, 'line'>> {
  const read: Partial<Record<keyof Row, Row[keyof Row]>> = {};
  for (const [index, column] of mapping.entries()) {
    const cell = cells[index] ?? '';
    if (!column || cell === '') continue;
    const value = column.read(cell, decimal);
    if (!value.ok) return failed({ column: column.key, fault: value.fault });
    read[column.key] = value.value;
  }
  const lacking = COLUMNS.find(({ key, needed }) => needed && (read[key] ?? '') === '');
  if (lacking) return failed({ column: lacking.key, fault: { is: 'empty' } });
  return got({ ...EMPTY_ROW, ...read } as Row);
}

const plain = (heading: string): string => heading.trim().toLowerCase().replace(/\s+/g, ' ');
