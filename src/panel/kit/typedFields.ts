// Numbers and words as they stand in a form's fields; an empty field is not known.
import { typedNumber } from '../words/typedNumber.ts';

/** Only a number gets a true minus: a hyphen in a serial number is part of it. */
export function asText(value: number | string | null | undefined): string {
  if (typeof value === 'number') return String(value).replace('-', '\u2212');
  return value ?? '';
}

/** Null where nothing was typed; not a number where no number was. */
export const asNumber = (text: string): number | null => (text.trim() === '' ? null : typedNumber(text));

export const asWords = (text: string): string | null => text.trim() || null;
