// Japanese: what is wrong with a line of a table that comes in.
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
  'ends turned round': '下端は上端より大きくできません。',
  'does not fit': 'この行の内容が正しくありません。確かめてください。',
};

const MOST = 30;
const quoted = (cell: string): string => (cell.length > MOST ? `「${cell.slice(0, MOST)}…」` : `「${cell}」`);

function cellFault(fault: CellFault): string {
  switch (fault.is) {
    case 'two numbers':
      return `${quoted(fault.cell)}は2通りに読めます。${fault.thousands}か${fault.decimal}と書いてください。`;
    case 'no number':
      return `${quoted(fault.cell)}は数ではありません。`;
    case 'no date':
      return `${quoted(fault.cell)}は日付ではありません。2026-03-04のように、年-月-日で書いてください。`;
    case 'none of these':
      return `${quoted(fault.cell)}は次のどれでもありません：${write.list(fault.options)}。`;
    case 'empty':
      return '空欄です。どの行にも必要です。';
    case 'no such converter':
      return `先に${quoted(fault.converter)}を倍率とともに機材に追加してください。`;
    case 'no correction':
      return `${write.number(fault.value, 3)}は補正値ではありません。-3のような整数を書いてください。`;
    case 'unfit':
      return NAMED[fault.fault];
  }
}

/** What it is, and beside it its heading in the file. */
export const columnSaid = (column: keyof ColumnNames, heading: string | null): string =>
  columnNamed(COLUMN[column], heading, (name, own) => `${name}${quoted(own)}`);

export const lineFault = ({ line, column, fault }: LineFault, heading: string | null): string =>
  column === null ? `${write.number(line)}行目：${cellFault(fault)}` : `${write.number(line)}行目、${columnSaid(column, heading)}：${cellFault(fault)}`;
