// A value told in taught words, one at a time: "set", "minus", "one", "two". It is complete when nothing more comes,
// and is then one text for the same matcher that reads everything else.
import type { Vocabulary } from '../../hearing/languages/heardLanguage.ts';
import { digitsOf } from './digits.ts';

/** What was told so far, word by word. */
export interface WordByWord {
  readonly words: readonly string[];
  /** When the last word ended, in seconds since the ear opened. */
  readonly last: number;
}

export interface SpelledValues {
  /** The words to teach for values, beside "set". */
  readonly words: readonly string[];
  /** What was told with this word added; null when the word does not belong to it, or is out of place. */
  spelt(before: WordByWord | null, word: string, ended: number): WordByWord | null;
  /** The text once it is whole: a second digit was said, or none came in time. Null while more may come. */
  wholeText(told: WordByWord, now: number): string | null;
  /** True when the pause has run out before a digit came: ask again. */
  gaveUp(told: WordByWord, now: number): boolean;
}

/**
 * Longer than anyone pauses between two digits, shorter than anyone waits for an answer: common practice, no source.
 */
const PAUSE = 1.6;
const MOST_DIGITS = 2;

export function spelledValues({ words: taught, signs, numbers }: Vocabulary): SpelledValues {
  const digits = digitsOf(numbers);
  const signWords: readonly string[] = [signs.plus[0], signs.minus[0]];
  const digitsIn = ({ words }: Pick<WordByWord, 'words'>): number => words.filter((one) => digits.includes(one)).length;
  return {
    words: [...signWords, ...digits],
    spelt(before, word, ended) {
      const words = before?.words ?? [];
      const signed = words.some((one) => signWords.includes(one));
      const said = digitsIn({ words });
      const fits =
        word === taught.set.say
          ? words.length === 0
          : signWords.includes(word)
            ? !signed && said === 0
            : digits.includes(word) && said < MOST_DIGITS && (signed || (word === digits[0] && words.length > 0));
      return fits ? { words: [...words, word], last: ended } : null;
    },
    wholeText(told, now) {
      const said = digitsIn(told);
      return said === MOST_DIGITS || (said > 0 && now - told.last > PAUSE) ? told.words.join(' ') : null;
    },
    gaveUp: (told, now) => now - told.last > 2 * PAUSE && digitsIn(told) === 0,
  };
}
