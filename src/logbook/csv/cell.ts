// What stands in one field. Text that a spreadsheet would run as a formula is made harmless with an apostrophe, and the
// apostrophe is taken off again on the way in (the danger and the remedy: OWASP, 'CSV Injection'). Numbers and dates
// are written in one way and read only where they can be read in one way.
import { isoOf, readIso } from '../../calendar.ts';
import { failed, got, type Result } from '../../result.ts';
import type { Moment } from '../../units.ts';
import type { CellFault } from './fault.ts';

/**
 * The beginnings of a formula, in the narrow and the wide form, after any blanks; and what already carries
 * apostrophes.
 */
const FORMULA = /^'*[\s\p{C}]*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^'*[\t\r\n]/u;

export const writeText = (text: string): string => (FORMULA.test(text) ? `'${text}` : text);
export const readCellText = (cell: string): string => (cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell);

/** With a point; a plain number runs nowhere, so it keeps its minus. */
export const writeCellNumber = (value: number): string => String(value);

const NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;

/** Reads a number with a point or a comma; a comma that could part thousands is refused. */
export function readCellNumber(cell: string): Result<number, CellFault> {
  const text = readCellText(cell.trim()).trim().replace('\u2212', '-');
  const ambiguous = /^[+-]?\d{1,3}(,\d{3})+$/.test(text) && !/^[+-]?0,/.test(text);
  if (ambiguous) return failed({ is: 'two numbers', cell, thousands: text.replaceAll(',', ''), decimal: text.replace(',', '.') });
  const number = /^[+-]?\d*,\d+$/.test(text) ? text.replace(',', '.') : text;
  const value = Number(number);
  return NUMBER.test(number) && Number.isFinite(value) ? got(value) : failed({ is: 'no number', cell });
}

export const writeMoment = (at: Moment): string => isoOf(at);

/** Reads year-month-day, with or without a time; forms that differ between countries are refused. */
export function readMoment(cell: string): Result<Moment, CellFault> {
  const at = readIso(readCellText(cell.trim()));
  return at === null ? failed({ is: 'no date', cell }) : got(at);
}
