// Corrections as they are heard and as they are said. A correction is only understood with its sign, because a lost
// "minus" would send the person the wrong way; zero needs none.
import { steps, type Steps } from '../units.ts';
import { NUMBER_SPELLINGS, ONES, SIGNS, TENS } from './vocabulary/en.ts';

/** Lower-case words of a recogniser's text. Signs before digits become words, whichever minus was written. */
export function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/\+/g, ' plus ')
    .replace(/(^|\s)[-\u2010-\u2015\u2212]\s*(?=\d)/g, ' minus ')
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
}

/** The correction these words say, such as "plus 7", "minus one two" or "zero"; null when they say none. */
export function correctionIn(words: readonly string[]): Steps | null {
  const [first, ...rest] = words;
  if (first === undefined) return null;
  const sign = isOneOf(SIGNS.plus, first) ? 1 : isOneOf(SIGNS.minus, first) ? -1 : 0;
  if (sign === 0) return wholeNumber(words) === 0 ? steps(0) : null;
  const size = wholeNumber(rest.map((word) => NUMBER_SPELLINGS[word] ?? word));
  return size === null ? null : steps(size === 0 ? 0 : sign * size);
}

/** A correction as it is said: "plus six", "minus twelve", "zero". A half-step centre is "plus four and a half". */
export function sayCorrection(value: number): string {
  if (value === 0) return 'zero';
  return `${value > 0 ? 'plus' : 'minus'} ${sayNumber(Math.abs(value))}`;
}

/** A number from 0 to 999 in words, to the nearest half. */
export function sayNumber(value: number): string {
  const doubled = Math.round(value * 2);
  const whole = Math.floor(doubled / 2);
  if (doubled % 2 === 0) return sayWhole(whole);
  return whole === 0 ? 'a half' : `${sayWhole(whole)} and a half`;
}

function sayWhole(value: number): string {
  if (value >= 100) return [ONES[Math.floor(value / 100)], 'hundred', ...(value % 100 ? [sayWhole(value % 100)] : [])].join(' ');
  if (value < 20) return ONES[value] ?? String(value);
  const ten = TENS[Math.floor(value / 10)] ?? '';
  return value % 10 === 0 ? ten : `${ten} ${ONES[value % 10]}`;
}

/** "12", "twelve", "one two" and "twenty one"; null when the words are no whole number below a hundred. */
function wholeNumber(words: readonly string[]): number | null {
  const parts = words.map(partOf);
  const [first, second] = parts;
  if (first === undefined || first === null || second === null || parts.length > 2) return null;
  if (second === undefined) return first;
  if (!isDigit(second)) return null;
  if (isTen(first)) return second > 0 ? first + second : null;
  return isDigit(first) ? first * 10 + second : null;
}

function partOf(word: string): number | null {
  if (/^\d{1,2}$/.test(word)) return Number(word);
  const one = ONES.findIndex((name) => name === word);
  if (one >= 0) return one;
  const ten = TENS.findIndex((name) => name === word);
  return ten >= 2 ? ten * 10 : null;
}

const isTen = (value: number): boolean => value >= 20 && value % 10 === 0;
const isDigit = (value: number): boolean => value < 10;
const isOneOf = (names: readonly string[], word: string): boolean => names.includes(word);
