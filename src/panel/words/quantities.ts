// How quantities are written on the screens.
import type { Millimetres, Moment } from '../../units.ts';

const plain = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

/** 4250 mm is "4.25 m". */
export const inMetres = (length: Millimetres): string => `${metresTyped(length)} m`;

/** The same without its unit, as it stands in a field. */
export const metresTyped = (length: Millimetres): string => plain(length / 1000, length < 10_000 ? 2 : 1);

export const inMillimetres = (length: Millimetres): string => `${plain(length, 0)} mm`;

export const holdsCounted = (count: number): string => (count === 1 ? '1 hold' : `${count} holds`);

/** Made once, when a date is first shown: making it takes longer than all the dates of a list. */
let days: Intl.DateTimeFormat | undefined;

export function onDay(when: Moment): string {
  days ??= new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short', year: 'numeric' });
  return days.format(when);
}
