// German: what is wrong with a line of a table that comes in.
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
  'ends turned round': 'Das untere Ende darf nicht über dem oberen liegen.',
  'does not fit': 'Das passt nicht. Prüfen Sie die Zeile.',
};

const MOST = 30;
const quoted = (cell: string): string => (cell.length > MOST ? `„${cell.slice(0, MOST)}…“` : `„${cell}“`);

function cellFault(fault: CellFault): string {
  switch (fault.is) {
    case 'two numbers':
      return `${quoted(fault.cell)} lässt sich auf zwei Arten lesen. Schreiben Sie ${fault.thousands} oder ${fault.decimal}.`;
    case 'no number':
      return `${quoted(fault.cell)} ist keine Zahl.`;
    case 'no date':
      return `${quoted(fault.cell)} ist kein Datum. Schreiben Sie Jahr-Monat-Tag, zum Beispiel 2026-03-04.`;
    case 'none of these':
      return `${quoted(fault.cell)} ist keines davon: ${write.choice(fault.options)}.`;
    case 'empty':
      return 'Das Feld ist leer. Jede Zeile braucht es.';
    case 'no such converter':
      return `Nehmen Sie ${quoted(fault.converter)} zuerst mit seinem Faktor in die Ausrüstung auf.`;
    case 'no correction':
      return `${write.number(fault.value, 3)} ist keine Korrektur. Schreiben Sie eine ganze Zahl, zum Beispiel -3.`;
    case 'unfit':
      return NAMED[fault.fault];
  }
}

/** What it is, and beside it its heading in the file. */
export const columnSaid = (column: keyof ColumnNames, heading: string | null): string =>
  columnNamed(COLUMN[column], heading, (name, own) => `${name} (${quoted(own)})`);

export const lineFault = ({ line, column, fault }: LineFault, heading: string | null): string =>
  column === null ? `Zeile ${write.number(line)}: ${cellFault(fault)}` : `Zeile ${write.number(line)}, ${columnSaid(column, heading)}: ${cellFault(fault)}`;
