// Numbers as people type them.
import { numbersIn } from '../../optics/writtenNumber.ts';

/**
 * What a person typed as a number; the decimal comma, a true minus and spaces are welcome, and a comma before exactly three
 * digits parts thousands. Not a number: NaN.
 */
export function typedNumber(text: string): number {
  const [, sign = '', digits = ''] = /^([-+\u2212]?)(.*)$/s.exec(text.trim()) ?? [];
  const number = numbersIn(digits).at(-1) ?? Number.NaN;
  return sign === '' || sign === '+' ? number : -number;
}
