// The columns of the results table: what heads each, under which other headings a person's own table may have it, and
// how its fields are written and read.
import { failed, got, type Result } from '../../result.ts';
import { readMoment, readCellNumber, readCellText, writeMoment, writeCellNumber, writeText } from './cell.ts';
import type { CellFault } from './fault.ts';
import { PHOTOGRAPHED, SHOWED } from './photographed.ts';
import type { Row } from './row.ts';
import type { DecimalMark } from './style.ts';

export interface Column {
  readonly key: keyof Row;
  readonly heading: string;
  /** Other headings, in small letters. */
  readonly also: readonly string[];
  /** Must a line have something here? */
  readonly needed: boolean;
  readonly write: (row: Row, decimal: DecimalMark) => string;
  /** `decimal`: what numbers have in this table, null where it may be either. */
  readonly read: (cell: string, decimal: ',' | null) => Result<Row[keyof Row], CellFault>;
}

type KeysOf<Value> = { [Key in keyof Row]: Row[Key] extends Value ? Key : never }[keyof Row];
type TextKey = KeysOf<string | null>;
type DateKey = 'at' | 'taken';
type NumberKey = Exclude<KeysOf<number | null>, DateKey>;

const text = (key: TextKey, heading: string, also: readonly string[] = [], needed = false): Column => ({
  key,
  heading,
  also,
  needed,
  write: (row) => writeText(row[key] ?? ''),
  read: (cell) => got(readCellText(cell)),
});

/** A name or a serial: blanks alone are none. */
const named = (key: TextKey, heading: string, also: readonly string[] = [], needed = false): Column => ({
  ...text(key, heading, also, needed),
  read: (cell) => {
    const read = readCellText(cell);
    return got(read.trim() === '' ? null : read);
  },
});

const number = (key: NumberKey, heading: string, also: readonly string[] = [], needed = false, times = 1): Column => ({
  key,
  heading,
  also,
  needed,
  write: (row, decimal) => (row[key] === null ? '' : writeCellNumber(row[key], decimal)),
  read: (cell, decimal) => {
    const read = readCellNumber(cell, decimal);
    return read.ok ? got(read.value * times) : read;
  },
});

function oneOf<Key extends TextKey>(key: Key, heading: string, options: readonly (Row[Key] & string)[]): Column {
  return {
    key,
    heading,
    also: [],
    needed: false,
    write: (row) => row[key] ?? '',
    read: (cell) => {
      const option = options.find((known) => known === readCellText(cell).trim().toLowerCase());
      return option === undefined ? failed({ is: 'none of these', cell, options }) : got(option);
    },
  };
}

const date = (key: DateKey, heading: string, also: readonly string[] = []): Column => ({
  key,
  heading,
  also,
  needed: false,
  write: (row) => (row[key] === null ? '' : writeMoment(row[key])),
  read: readMoment,
});

/** The columns that are written, in this order. */
export const COLUMNS: readonly Column[] = [
  oneOf('kind', 'kind', ['sweep', 'by hand', 'from a table', 'from another computer', 'entered', ...PHOTOGRAPHED]),
  date('at', 'date', ['when', 'day', 'measured', 'measured on', 'entered on']),
  named('body', 'body', ['camera', 'camera body'], true),
  named('bodySerial', 'body serial', ['camera serial', 'body serial number']),
  named('lens', 'lens', ['lens name', 'objective'], true),
  named('lensSerial', 'lens serial', ['lens serial number']),
  named('converter', 'converter', ['teleconverter', 'extender']),
  number('focalLength', 'focal length (mm)', ['focal length', 'focal', 'mm'], true),
  number('distance', 'distance (mm)', [], true),
  oneOf('found', 'found', ['band', 'value', 'carried over', 'past the limit', 'beyond the scale', 'nothing']),
  number('low', 'low', ['low end', 'from value', 'min']),
  number('high', 'high', ['high end', 'to value', 'max']),
  number('centre', 'centre', ['center', 'middle']),
  number('value', 'value', ['correction', 'adjustment', 'chosen']),
  number('from', 'interval from'),
  number('to', 'interval to'),
  number('within', 'within one step', ['confidence']),
  number('holds', 'holds'),
  number('seconds', 'seconds'),
  number('light', 'light (EV)', ['light', 'ev']),
  number('temperature', 'temperature (°C)', ['temperature', 'temp', '°c']),
  text('firmware', 'firmware'),
  text('note', 'note', ['notes', 'remark', 'remarks', 'comment']),
  date('taken', 'pictures taken'),
  number('shots', 'shots'),
  number('checked', 'value checked'),
  number('focusError', 'focus error (mm)'),
  number('focusErrorFrom', 'focus error from (mm)'),
  number('focusErrorTo', 'focus error to (mm)'),
  number('scatter', 'scatter (mm)'),
  number('nearLessFar', 'near less far (mm)'),
  number('stepWorth', 'one step (mm)'),
  number('stepWorthFrom', 'one step from (mm)'),
  number('stepWorthTo', 'one step to (mm)'),
  oneOf('showed', 'photographs showed', SHOWED),
  text('id', 'id'),
];

/** Columns that are only read: a person's own table gives the distance in metres. */
export const ALSO_READ: readonly Column[] = [number('distance', 'distance (m)', ['distance', 'metres', 'meters', 'm'], true, 1000)];
