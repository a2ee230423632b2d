// Which number a text of the bench means, where "1,000" may be one or a thousand: the field's range says, and what it allows twice is
// asked about, never guessed. A length with its unit is read in the same way in length.ts.
import type * as v from 'valibot';
import { failed, got, type Result } from '../result.ts';
import type { BenchFault } from './fault.ts';
import { fits } from './fits.ts';
import { numbersIn, signed, thousandsPointed } from './writtenNumber.ts';

type Range<Value> = v.GenericSchema<unknown, Value>;

/** A value of the range; the fault that the range names where the text means none of it. */
export function readWithin<Value>(range: Range<Value>, text: string): Result<Value, BenchFault> {
  const meant = meantIn(range, text);
  const [one, other] = meant;
  const read = fits(range, one ?? Number.NaN);
  return read.ok && other !== undefined ? twoNumbers(text, meant) : read;
}

/** Any number. `likely` only settles a doubt: what lies outside it is taken where the text can mean nothing else. */
export function readLikely(likely: Range<number>, text: string, otherwise: BenchFault): Result<number, BenchFault> {
  const meant = meantIn(likely, text);
  const [one, other] = meant;
  if (one === undefined) return failed(otherwise);
  return other === undefined ? got(one) : twoNumbers(text, meant);
}

/** The numbers in the range that the text can mean, or else all that it can. */
function meantIn(range: Range<unknown>, text: string): readonly number[] {
  const { sign, digits } = signed(text);
  const inRange = (number: number): boolean => fits(range, number).ok;
  const ways = numbersIn(digits).map((number) => sign * number);
  const fitting = ways.filter(inRange);
  if (fitting.length > 0) return fitting;
  const thousands = thousandsPointed(digits);
  return thousands !== null && inRange(sign * thousands) ? [sign * thousands] : ways;
}

const twoNumbers = (text: string, meant: readonly number[]) => {
  const [one = Number.NaN, other = Number.NaN] = meant;
  return failed<BenchFault>({ is: 'two numbers', text: text.trim(), one, other });
};
