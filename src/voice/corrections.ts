// Corrections as they are heard. A correction is only understood with its sign, because a lost "minus" would send the
// person the wrong way; zero needs none.
import { steps, type Steps } from '../units.ts';
import { ONES, TENS } from './vocabulary/en.ts';
import { NUMBER_SPELLINGS, SIGNS } from './vocabulary/heard.ts';

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
