// French: corrections as they are said.
import { sayWhole } from './say.ts';

/** A correction as it is said: "plus six", "moins douze", "zéro". A half-step centre is "plus quatre et demi". */
export function sayCorrection(value: number): string {
  if (value === 0) return 'zéro';
  return `${value > 0 ? 'plus' : 'moins'} ${sayNumber(Math.abs(value))}`;
}

/** A number from 0 to 999 in words, to the nearest half. */
export function sayNumber(value: number): string {
  const doubled = Math.round(value * 2);
  const whole = Math.floor(doubled / 2);
  if (doubled % 2 === 0) return sayWhole(whole);
  return whole === 0 ? 'un demi' : `${sayWhole(whole)} et demi`;
}
