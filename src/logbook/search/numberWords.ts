// Numbers as photographers say them, written in figures: "eighty-five", "one thirty-five", "one oh five", "twenty-four
// seventy", "two hundred", "one point eight", and a letter with its number, "M one". English only.
import { ONES, TENS } from '../../voice/vocabulary/en.ts';

const wordsOfOnes: readonly string[] = ONES;
const wordsOfTens: readonly string[] = TENS;

/** The text with every number word in figures; all other words as they were, parted by single blanks. */
export function inFigures(text: string): string {
  const words = text
    .toLowerCase()
    .split(/[\s-]+/)
    .filter((word) => word !== '');
  const written: string[] = [];
  let at = 0;
  while (at < words.length) {
    const letter = /^[b-z]$/.test(words[at] ?? '') ? (words[at] ?? '') : '';
    const number = letter === '' ? numberAt(words, at) : digitAt(words, at + 1);
    written.push(number ? letter + withDecimals(words, number).text : (words[at] ?? ''));
    at = number ? withDecimals(words, number).next : at + 1;
  }
  return written.join(' ');
}

const DIGIT = `(?:${wordsOfOnes.slice(0, 10).join('|')}|\\d)`;
/** Not the end of "thirty five". */
const DIGITS = new RegExp(`(?<!(?:${wordsOfTens.slice(2).join('|')})[\\s-]+)\\b${DIGIT}(?:\\s+${DIGIT})+\\b`, 'g');

/** Digits told one after another are one number: "eight five" is 85, and a serial number is as long as it is. */
export const digitsJoined = (text: string): string =>
  text.toLowerCase().replace(DIGITS, (run) => run.replace(/[a-z]+/g, (word) => String(wordsOfOnes.indexOf(word))).replace(/\s+/g, ''));

interface Read {
  readonly text: string;
  readonly next: number;
}

function numberAt(words: readonly string[], at: number): Read | null {
  const word = words[at] ?? '';
  if (/^\d+$/.test(word)) return { text: word, next: at + 1 };
  if (word === 'hundred') return hundreds(words, 1, at);
  if (word === 'a' && words[at + 1] === 'hundred') return hundreds(words, 1, at + 1);
  const tens = tensOf(word);
  if (tens !== null) {
    const ones = digitOf(words[at + 1]);
    return ones === null || words[at + 2] === 'hundred' ? read(tens, at + 1) : read(tens + ones, at + 2);
  }
  const ones = wordsOfOnes.indexOf(word);
  if (ones < 0) return null;
  if (words[at + 1] === 'hundred') return hundreds(words, ones, at + 1);
  return ones >= 1 && ones <= 9 ? afterDigit(words, ones, at) : read(ones, at + 1);
}

/** "One oh five", "one fifteen", "one thirty-five": the digit counts hundreds. */
function afterDigit(words: readonly string[], digit: number, at: number): Read {
  const next = words[at + 1] ?? '';
  const last = digitOf(words[at + 2]);
  if ((next === 'oh' || next === 'zero') && last !== null) return read(digit * 100 + last, at + 3);
  const rest = twoFiguresAt(words, at + 1);
  return rest ? read(digit * 100 + rest.value, rest.next) : read(digit, at + 1);
}

function hundreds(words: readonly string[], count: number, hundred: number): Read {
  const from = words[hundred + 1] === 'and' ? hundred + 2 : hundred + 1;
  const digit = digitOf(words[from]);
  const rest = digit === null ? twoFiguresAt(words, from) : { value: digit, next: from + 1 };
  return rest ? read(count * 100 + rest.value, rest.next) : read(count * 100, hundred + 1);
}

function twoFiguresAt(words: readonly string[], at: number): { value: number; next: number } | null {
  const tens = tensOf(words[at] ?? '');
  if (tens !== null) {
    const ones = digitOf(words[at + 1]);
    return ones === null ? { value: tens, next: at + 1 } : { value: tens + ones, next: at + 2 };
  }
  const teen = wordsOfOnes.indexOf(words[at] ?? '');
  return teen >= 10 ? { value: teen, next: at + 1 } : null;
}

function digitAt(words: readonly string[], at: number): Read | null {
  const digit = /^\d+$/.test(words[at] ?? '') ? Number(words[at]) : digitOf(words[at]);
  return digit === null ? null : read(digit, at + 1);
}

/** "Point eight", after the whole part. */
function withDecimals(words: readonly string[], whole: Read): Read {
  if (words[whole.next] !== 'point') return whole;
  let next = whole.next + 1;
  let figures = '';
  for (let word = words[next] ?? ''; ; word = words[next] ?? '') {
    const figure = /^\d+$/.test(word) ? word : word === 'oh' || word === 'zero' ? '0' : digitOf(word);
    if (figure === null) break;
    figures += figure;
    next++;
  }
  return figures === '' ? whole : { text: `${whole.text}.${figures}`, next };
}

const read = (value: number, next: number): Read => ({ text: String(value), next });

function tensOf(word: string): number | null {
  const tens = wordsOfTens.indexOf(word);
  return tens >= 2 ? 10 * tens : null;
}


function digitOf(word: string | undefined): number | null {
  const digit = wordsOfOnes.indexOf(word ?? '');
  return digit >= 1 && digit <= 9 ? digit : null;
}
