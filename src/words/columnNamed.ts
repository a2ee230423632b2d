// A column of a table by what it is, and beside that by the heading that stands in the file. The headings that are written here are the same
// in every language, so that a table goes from one person to another.
import type { Row } from '../logbook/csv/row.ts';

export type ColumnNames = Readonly<Record<keyof Row, string>>;

/** As much as a heading may say beside the name and still stand alone: its unit. */
const UNIT = 8;

/** `both`: how the two are written together. A heading that says what the column is stands alone; null where there is none. */
export const columnNamed = (name: string, heading: string | null, both: (name: string, heading: string) => string): string => {
  if (heading === null) return name;
  const own = heading.trim();
  const isAlone = own.length <= name.length + UNIT && `${own.toLowerCase()} `.startsWith(`${name.toLowerCase()} `);
  return isAlone ? own : both(name, own);
};
