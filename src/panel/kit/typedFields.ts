// Numbers and words as they stand in a form's fields; an empty field is not known.
import { typedNumber } from '../words/typedNumber.ts';

export const asText = (value: number | string | null | undefined): string => (value === null || value === undefined ? '' : String(value).replace('-', '\u2212'));

/** Null where nothing was typed; not a number where no number was. */
export const asNumber = (text: string): number | null => (text.trim() === '' ? null : typedNumber(text));

export const asWords = (text: string): string | null => text.trim() || null;
