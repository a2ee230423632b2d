// English: what is wrong with a line of a table that comes in.
import type { CellFault, LineFault } from '../../logbook/csv/fault.ts';
import type { NamedFault } from '../../logbook/unfit.ts';
import { columnNamed, type ColumnNames } from '../columnNamed.ts';
import { COLUMN } from './columns.ts';
import { CONDITION_FAULT } from './conditionFaults.ts';
import { FIELD_FAULT } from './fieldFaults.ts';
import { write } from './write.ts';

const NAMED: Readonly<Record<NamedFault, string>> = {
  ...FIELD_FAULT,
  ...CONDITION_FAULT,
  'ends turned round': 'The low end must not be above the high end.',
  'does not fit': 'This does not fit. Check what the line says.',
};

const MOST = 30;
const quoted = (cell: string): string => (cell.length > MOST ? `“${cell.slice(0, MOST)}…”` : `“${cell}”`);

function cellFault(fault: CellFault): string {
  switch (fault.is) {
    case 'two numbers':
      return `${quoted(fault.cell)} can be read in two ways. Write ${fault.thousands} or ${fault.decimal}.`;
    case 'no number':
      return `${quoted(fault.cell)} is not a number.`;
    case 'no date':
      return `${quoted(fault.cell)} is not a date. Write it as year-month-day, such as 2026-03-04.`;
    case 'none of these':
      return `${quoted(fault.cell)} is none of these: ${write.choice(fault.options)}.`;
    case 'empty':
      return 'It is empty. Every line needs it.';
    case 'no such converter':
      return `Add ${quoted(fault.converter)} to the kit first, with its factor.`;
    case 'no correction':
      return `${write.number(fault.value, 3)} is no correction. Write a whole number, such as -3.`;
    case 'unfit':
      return NAMED[fault.fault];
  }
}

/** What it is, and beside it its heading in the file. */
export const columnSaid = (column: keyof ColumnNames, heading: string | null): string =>
  columnNamed(COLUMN[column], heading, (name, own) => `${name} (${quoted(own)})`);

export const lineFault = ({ line, column, fault }: LineFault, heading: string | null): string =>
  column === null ? `Line ${write.number(line)}: ${cellFault(fault)}` : `Line ${write.number(line)}, ${columnSaid(column, heading)}: ${cellFault(fault)}`;
