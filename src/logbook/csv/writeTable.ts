// The results as a table for a spreadsheet: headings with their units, numbers as its language has them, dates as year-month-day
// in UTC.
import type { Library } from '../library.ts';
import { COLUMNS } from './columns.ts';
import { writeCsv } from './csv.ts';
import { tableRowsOf, type Row } from './row.ts';
import type { TableStyle } from './style.ts';

/** Begins with a byte order mark, without which common spreadsheets misread what is not plain English. */
export const writeTable = (library: Library, style: TableStyle): string => `\uFEFF${writeRows(tableRowsOf(library), style)}`;

export const writeRows = (rows: readonly Row[], { delimiter, decimal }: TableStyle): string =>
  writeCsv([COLUMNS.map(({ heading }) => heading), ...rows.map((row) => COLUMNS.map(({ write }) => write(row, decimal)))], delimiter);
