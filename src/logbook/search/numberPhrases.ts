// Every way of saying a number that a question may hold, made of how the language says it. Photographers leave the hundred
// out: "one thirty-five", "one oh five".
import type { SaidNumbers } from '../../hearing/languages/heardLanguage.ts';
import { fold } from './words.ts';

export interface NumberPhrases {
  /** Words without accents, parted by single blanks, and the number they say. */
  readonly sizes: ReadonlyMap<string, number>;
  /** In words, of all phrases. */
  readonly longest: number;
  /** What a digit before it counts; null where the language has no such word. */
  readonly hundred: string | null;
  /** By the digit. */
  readonly digits: readonly string[];
  /** What stands before a digit that belongs to it: "thirty", "one hundred", and "treinta y" where the language joins them so. */
  readonly tens: readonly string[];
}

/** Numbers of lenses, and years: below two thousand. */
const MOST = 1999;

export function phrasesOf({ say, also, zeros }: SaidNumbers): NumberPhrases {
  const sizes = new Map<string, number>();
  let longest = 1;
  const know = (phrase: string, size: number): void => {
    const words = wordsOf(phrase);
    longest = Math.max(longest, words.length);
    if (!sizes.has(words.join(' '))) sizes.set(words.join(' '), size);
  };
  for (let size = 0; size <= MOST; size++) for (const phrase of [say(size), ...also(size)]) know(phrase, size);
  for (let size = 101; size < 1000; size++) {
    const [count, rest] = [Math.floor(size / 100), size % 100];
    if (rest >= 10) know(`${say(count)} ${say(rest)}`, size);
    else if (rest > 0) for (const zero of [say(0), ...zeros]) know(`${say(count)} ${zero} ${say(rest)}`, size);
  }
  const [two = '', counted] = wordsOf(say(200));
  return {
    sizes,
    longest,
    hundred: two === fold(say(2)) ? (counted ?? null) : null,
    digits: Array.from({ length: 10 }, (_, digit) => fold(say(digit))),
    tens: [20, 30, 40, 50, 60, 70, 80, 90, 100].flatMap((ten) => [fold(say(ten)), ...joinedTo(fold(say(ten + 5)), fold(say(5)))]),
  };
}

/** "Treinta y", of "treinta y cinco". */
const joinedTo = (whole: string, digit: string): readonly string[] => (whole.endsWith(` ${digit}`) ? [whole.slice(0, -digit.length - 1)] : []);

const wordsOf = (phrase: string): string[] => fold(phrase).split(/[\s-]+/);
