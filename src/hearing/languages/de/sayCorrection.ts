// German: corrections as they are said.
import { sayWhole } from './say.ts';

/** A correction as it is said: "plus sechs", "minus zwölf", "null". A half-step centre is "plus viereinhalb". */
export function sayCorrection(value: number): string {
  if (value === 0) return 'null';
  return `${value > 0 ? 'plus' : 'minus'} ${sayNumber(Math.abs(value))}`;
}

/** A number from 0 to 999 in words, to the nearest half. */
export function sayNumber(value: number): string {
  const doubled = Math.round(value * 2);
  const whole = Math.floor(doubled / 2);
  if (doubled % 2 === 0) return sayWhole(whole);
  if (whole === 0) return 'ein halb';
  return `${sayWhole(whole).replace(/eins$/, 'ein')}einhalb`;
}
