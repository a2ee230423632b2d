// Spanish: what is wrong with a line of a table that comes in.
import type { CellFault, LineFault } from '../../logbook/csv/fault.ts';
import type { NamedFault } from '../../logbook/unfit.ts';
import { columnNamed, type ColumnNames } from '../columnNamed.ts';
import { COLUMN } from './columns.ts';
import { CONDITION_FAULT } from './conditionFaults.ts';
import { FIELD_FAULT } from './fieldFaults.ts';
import { small } from '../run.ts';
import { write } from './write.ts';

const NAMED: Readonly<Record<NamedFault, string>> = {
  ...FIELD_FAULT,
  ...CONDITION_FAULT,
  'ends turned round': 'El extremo inferior no debe estar por encima del superior.',
  'does not fit': 'No es válido. Revise lo que dice la línea.',
};

const MOST = 30;
const quoted = (cell: string): string => (cell.length > MOST ? `«${cell.slice(0, MOST)}…»` : `«${cell}»`);

function cellFault(fault: CellFault): string {
  switch (fault.is) {
    case 'two numbers':
      return `${quoted(fault.cell)} se puede leer de dos maneras. Escriba ${fault.thousands} o ${fault.decimal}.`;
    case 'no number':
      return `${quoted(fault.cell)} no es un número.`;
    case 'no date':
      return `${quoted(fault.cell)} no es una fecha. Escríbala como año-mes-día, por ejemplo 2026-03-04.`;
    case 'none of these':
      return `${quoted(fault.cell)} no es ninguna de estas opciones: ${write.choice(fault.options)}.`;
    case 'empty':
      return 'El campo está vacío. Hace falta en todas las líneas.';
    case 'no such converter':
      return `Añada antes ${quoted(fault.converter)} al equipo, con su factor.`;
    case 'no correction':
      return `${write.number(fault.value, 3)} no es una corrección. Escriba un número entero, por ejemplo -3.`;
    case 'unfit':
      return NAMED[fault.fault];
  }
}

/** What it is, and beside it its heading in the file. */
export const columnSaid = (column: keyof ColumnNames, heading: string | null): string =>
  columnNamed(COLUMN[column], heading, (name, own) => `${name} (${quoted(own)})`);

export const lineFault = ({ line, column, fault }: LineFault, heading: string | null): string =>
  column === null
    ? `Línea ${write.number(line)}: ${small(cellFault(fault))}`
    : `Línea ${write.number(line)}, ${columnSaid(column, heading)}: ${small(cellFault(fault))}`;
