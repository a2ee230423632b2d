// Whether the print came out at true size. Printers and dialogs shrink pages to fit; a scale of known length shows
// it, and a print that is merely smaller can be kept: its true lengths are the drawn ones times this factor.
import * as v from 'valibot';
import { millimetres, type Millimetres } from '../../units.ts';
import { failed, got, type Result } from '../../result.ts';
import { writeNumber } from '../quantity.ts';

/** Printed length over drawn length. */
export const PrintFactor = v.pipe(v.number(), v.minValue(0.5), v.maxValue(2), v.brand('PrintFactor'));
export type PrintFactor = v.InferOutput<typeof PrintFactor>;
export const TRUE_SIZE = 1 as PrintFactor;

export interface PrintCheck {
  readonly factor: PrintFactor;
  readonly trueSize: boolean;
  readonly say: string;
}

/** A steel rule is read to half a millimetre in a hundred. */
const READING_ERROR = 0.005;

/** From the scale's drawn length and what a rule shows on paper. */
export function checkPrint(drawn: Millimetres, measured: Millimetres): Result<PrintCheck> {
  const factor = measured / drawn;
  if (!(factor >= 0.5 && factor <= 2)) {
    return failed(
      'Measure the scale again, in millimetres, between the outer edges of its end marks: ' +
        `${writeNumber(drawn, 0)} is expected.`,
    );
  }
  const per = `${writeNumber(factor * 100, 1)} %`;
  const trueSize = Math.abs(factor - 1) <= READING_ERROR;
  const say = trueSize
    ? 'The print is true to size.'
    : `The print came out at ${per}: print it again at 100 %, not fitted to the page, or keep it and the sizes are ` +
      `reckoned with ${per}.`;
  return got({ factor: factor as PrintFactor, trueSize, say });
}

/** A drawn length as it came out on paper. */
export const printed = (drawn: Millimetres, factor: PrintFactor): Millimetres => millimetres(drawn * factor);
