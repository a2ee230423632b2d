// A value told in taught words, one at a time: "set", "minus", "one", "two". It is complete when nothing more comes,
// and is then one text for the same matcher that reads everything else.
import { ONES } from '../vocabulary/en.ts';
import { SIGNS } from '../vocabulary/heard.ts';

export interface Spelling {
  readonly words: readonly string[];
  /** When the last word ended, in seconds since the ear opened. */
  readonly last: number;
}

/**
 * Longer than anyone pauses between two digits, shorter than anyone waits for an answer: common practice, no source.
 */
const PAUSE = 1.6;
const MOST_DIGITS = 2;
const DIGITS: readonly string[] = ONES.slice(0, 10);
const SIGN_WORDS: readonly string[] = [SIGNS.plus[0], SIGNS.minus[0]];
const SET = 'set';

/** The words to teach for values, beside "set". */
export const SPELLING_WORDS: readonly string[] = [...SIGN_WORDS, ...DIGITS];

/** The spelling with this word added; null when the word does not belong to it, or is out of place. */
export function spelt(before: Spelling | null, word: string, ended: number): Spelling | null {
  const words = before?.words ?? [];
  const signed = words.some((one) => SIGN_WORDS.includes(one));
  const digits = words.filter((one) => DIGITS.includes(one)).length;
  const fits =
    word === SET
      ? words.length === 0
      : SIGN_WORDS.includes(word)
        ? !signed && digits === 0
        : DIGITS.includes(word) && digits < MOST_DIGITS && (signed || (word === DIGITS[0] && words.length > 0));
  return fits ? { words: [...words, word], last: ended } : null;
}

/** The text once it is whole: a second digit was said, or none came in time. Null while more may come. */
export function wholeText({ words, last }: Spelling, now: number): string | null {
  const digits = words.filter((one) => DIGITS.includes(one)).length;
  return digits === MOST_DIGITS || (digits > 0 && now - last > PAUSE) ? words.join(' ') : null;
}

/** True when the pause has run out before a digit came: ask again. */
export const gaveUp = ({ words, last }: Spelling, now: number): boolean =>
  now - last > 2 * PAUSE && !words.some((one) => DIGITS.includes(one));
