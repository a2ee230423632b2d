// How quantities are written on the screens.
import { writeSteps } from '../../sweep/scale.ts';
import type { Millimetres, Moment, Seconds } from '../../units.ts';

const plain = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

/** 4250 mm is "4.25 m". */
export const inMetres = (length: Millimetres): string => `${metresTyped(length)} m`;

/** The same without its unit, as it stands in a field. */
export const metresTyped = (length: Millimetres): string => plain(length / 1000, length < 10_000 ? 2 : 1);

export const inMillimetres = (length: Millimetres): string => `${plain(length, 0)} mm`;

/** Rounded down, and never "100 %": there is always a doubt left. */
export const inPercent = (chance: number): string => `${Math.min(99, Math.floor(chance * 100))} %`;

export const holdsCounted = (count: number): string => (count === 1 ? '1 hold' : `${count} holds`);

export function inMinutes(time: Seconds): string {
  const whole = Math.round(time);
  if (whole < 60) return `${whole} s`;
  return whole < 3600 ? `${Math.floor(whole / 60)} min ${whole % 60} s` : `${Math.floor(whole / 3600)} h ${Math.floor((whole % 3600) / 60)} min`;
}

export const onDay = (when: Moment): string => new Date(when).toLocaleDateString(undefined, { day: 'numeric', month: 'short', year: 'numeric' });

/** A place on the scale between its values, to a tenth of a correction. */
export const inTenths = (value: number): string => writeSteps(Number(value.toFixed(1)));

/** What a person typed as a number; the decimal comma, a true minus and spaces are welcome. Not a number: NaN. */
export function typedNumber(text: string): number {
  const cleaned = text.trim().replace(/\u2212/g, '-').replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(cleaned) ? Number(cleaned) : Number.NaN;
}
