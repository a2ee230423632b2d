// Spanish: corrections as they are said.
import { sayWhole } from './say.ts';

/** A correction as it is said: "más seis", "menos doce", "cero". A half-step centre is "más cuatro y medio". */
export function sayCorrection(value: number): string {
  if (value === 0) return 'cero';
  return `${value > 0 ? 'más' : 'menos'} ${sayNumber(Math.abs(value))}`;
}

/** A number from 0 to 999 in words, to the nearest half. */
export function sayNumber(value: number): string {
  const doubled = Math.round(value * 2);
  const whole = Math.floor(doubled / 2);
  if (doubled % 2 === 0) return sayWhole(whole);
  return whole === 0 ? 'medio' : `${sayWhole(whole)} y medio`;
}
