// Numbers and words as they stand in a form's fields; an empty field is not known.
import { numberTyped } from '../words/numberTyped.ts';
import { typedNumber } from '../words/typedNumber.ts';

/** Only a number gets a true minus: a hyphen in a serial number is part of it. */
export const asText = (value: number | string | null | undefined): string => (typeof value === 'number' ? numberTyped(value) : (value ?? ''));

/** Null where nothing was typed; not a number where no number was. */
export const asNumber = (text: string): number | null => (text.trim() === '' ? null : typedNumber(text));

export const asWords = (text: string): string | null => text.trim() || null;
