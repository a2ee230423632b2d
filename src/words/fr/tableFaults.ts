// French: what is wrong with a line of a table that comes in.
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
  'ends turned round': 'L’extrémité basse ne doit pas être au-dessus de l’extrémité haute.',
  'does not fit': 'Cela ne convient pas. Vérifiez ce que dit la ligne.',
};

const MOST = 30;
const quoted = (cell: string): string => (cell.length > MOST ? `« ${cell.slice(0, MOST)}… »` : `« ${cell} »`);

function cellFault(fault: CellFault): string {
  switch (fault.is) {
    case 'two numbers':
      return `${quoted(fault.cell)} peut se lire de deux façons. Écrivez ${fault.thousands} ou ${fault.decimal}.`;
    case 'no number':
      return `${quoted(fault.cell)} n’est pas un nombre.`;
    case 'no date':
      return `${quoted(fault.cell)} n’est pas une date. Écrivez-la année-mois-jour, par exemple 2026-03-04.`;
    case 'none of these':
      return `${quoted(fault.cell)} n’est aucune de ces valeurs : ${write.choice(fault.options)}.`;
    case 'empty':
      return 'Valeur absente. Il en faut une à chaque ligne.';
    case 'no such converter':
      return `Ajoutez d’abord ${quoted(fault.converter)} au matériel, avec son facteur.`;
    case 'no correction':
      return `${write.number(fault.value, 3)} n’est pas une correction. Écrivez un nombre entier, par exemple -3.`;
    case 'unfit':
      return NAMED[fault.fault];
  }
}

/** What it is, and beside it its heading in the file. */
export const columnSaid = (column: keyof ColumnNames, heading: string | null): string =>
  columnNamed(COLUMN[column], heading, (name, own) => `${name} (${quoted(own)})`);

export const lineFault = ({ line, column, fault }: LineFault, heading: string | null): string =>
  column === null
    ? `Ligne ${write.number(line)} : ${small(cellFault(fault))}`
    : `Ligne ${write.number(line)}, ${columnSaid(column, heading)} : ${small(cellFault(fault))}`;
