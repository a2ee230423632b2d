// Numbers as people type them.
import { numbersIn, signed } from '../../optics/writtenNumber.ts';

/**
 * What a person typed as a number; the decimal comma, a true minus, spaces and full-width digits are welcome, and a comma before exactly three
 * digits parts thousands. Not a number: NaN.
 */
export function typedNumber(text: string): number {
  const { sign, digits } = signed(text);
  const number = numbersIn(digits).at(-1) ?? Number.NaN;
  return sign * number;
}
