// How a table is written so that a spreadsheet of this computer's language opens it as it is meant: where numbers have a decimal
// comma, fields are parted by semicolons. A table that comes in says by its semicolons that its commas are decimal.
import type { Delimiter } from './delimiter.ts';

export type DecimalMark = '.' | ',';

export interface TableStyle {
  readonly delimiter: Delimiter;
  readonly decimal: DecimalMark;
}

export const WITH_COMMAS: TableStyle = { delimiter: ',', decimal: '.' };
export const WITH_SEMICOLONS: TableStyle = { delimiter: ';', decimal: ',' };

/** `language`: a tag of BCP 47; one that is none, as some systems have it, is written as English is. */
export function styleFor(language: string | undefined): TableStyle {
  try {
    const parts = new Intl.NumberFormat(language ?? 'en').formatToParts(1.5);
    return parts.some(({ type, value }) => type === 'decimal' && value === ',') ? WITH_SEMICOLONS : WITH_COMMAS;
  } catch {
    return WITH_COMMAS;
  }
}

/** What numbers have in a table parted so: a comma, or null where it may be either. */
export const decimalIn = (delimiter: Delimiter): ',' | null => (delimiter === ';' ? ',' : null);
