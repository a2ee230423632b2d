// What stands in one field. Text that a spreadsheet would run as a formula is made harmless with an apostrophe, and the
// apostrophe is taken off again on the way in (the danger and the remedy: OWASP, 'CSV Injection'). Numbers and dates
// are written in one way and read only where they can be read in one way.
import { isoOf, readIso } from '../../calendar.ts';
import { failed, got, type Result } from '../../result.ts';
import type { Moment } from '../../units.ts';
import type { CellFault } from './fault.ts';
import type { DecimalMark } from './style.ts';

/**
 * The beginnings of a formula, in the narrow and the wide form, after any blanks; and what already carries
 * apostrophes.
 */
const FORMULA = /^'*[\s\p{C}]*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^'*[\t\r\n]/u;

export const writeText = (text: string): string => (FORMULA.test(text) ? `'${text}` : text);
export const readCellText = (cell: string): string => (cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell);

/** A plain number runs nowhere, so it keeps its minus. */
export const writeCellNumber = (value: number, decimal: DecimalMark): string => String(value).replace('.', decimal);

const NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;

/** What could part thousands, each mark of the two; "0,125" has none. */
const IN_THOUSANDS = { ',': /^[+-]?(?!0,)\d{1,3}(,\d{3})+$/, '.': /^[+-]?(?!0\.)\d{1,3}(\.\d{3})+$/ };

/**
 * Reads a number with a point or a comma. What could part thousands is refused: a comma, or, where `decimal` says that this table has
 * decimal commas, a point.
 */
export function readCellNumber(cell: string, decimal: ',' | null = null): Result<number, CellFault> {
  const text = readCellText(cell.trim()).trim().replace('\u2212', '-');
  const [parts, other] = decimal === ',' ? (['.', ','] as const) : ([',', '.'] as const);
  if (IN_THOUSANDS[parts].test(text)) return failed({ is: 'two numbers', cell, thousands: text.replaceAll(parts, ''), decimal: text.replace(parts, other) });
  const number = /^[+-]?\d*,\d+(e[+-]?\d+)?$/i.test(text) ? text.replace(',', '.') : text;
  const value = Number(number);
  return NUMBER.test(number) && Number.isFinite(value) ? got(value) : failed({ is: 'no number', cell });
}

export const writeMoment = (at: Moment): string => isoOf(at);

/** Reads year-month-day, with or without a time; forms that differ between countries are refused. */
export function readMoment(cell: string): Result<Moment, CellFault> {
  const at = readIso(readCellText(cell.trim()));
  return at === null ? failed({ is: 'no date', cell }) : got(at);
}
