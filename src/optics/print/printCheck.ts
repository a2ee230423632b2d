// Whether the print came out at true size. Printers and dialogs shrink pages to fit; a scale of known length shows
// it, and a print that is merely smaller can be kept: its true lengths are the drawn ones times this factor.
import * as v from 'valibot';
import { millimetres, type Millimetres } from '../../units.ts';
import { failed, got, type Result } from '../../result.ts';
import type { BenchFault } from '../fault.ts';

/** Printed length over drawn length. */
export const PrintFactor = v.pipe(v.number(), v.minValue(0.5), v.maxValue(2), v.brand('PrintFactor'));
export type PrintFactor = v.InferOutput<typeof PrintFactor>;
export const TRUE_SIZE = 1 as PrintFactor;

export interface PrintCheck {
  readonly factor: PrintFactor;
  readonly trueSize: boolean;
}

/** A steel rule is read to half a millimetre in a hundred. */
const READING_ERROR = 0.005;

/** From the scale's drawn length and what a rule shows on paper. */
export function checkPrint(drawn: Millimetres, measured: Millimetres): Result<PrintCheck, BenchFault> {
  const factor = measured / drawn;
  if (!(factor >= 0.5 && factor <= 2)) return failed({ is: 'print misread', drawn });
  const off = Math.abs(measured - drawn);
  return got({ factor: factor as PrintFactor, trueSize: off <= READING_ERROR * drawn });
}

/** A drawn length as it came out on paper. */
export const printed = (drawn: Millimetres, factor: PrintFactor): Millimetres => millimetres(drawn * factor);
