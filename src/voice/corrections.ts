// Corrections as they are heard. A correction is only understood with its sign, because a lost "minus" would send the
// person the wrong way; zero needs none.
import type { Vocabulary } from '../hearing/languages/heardLanguage.ts';
import { steps, type Steps } from '../units.ts';
import { asIs, withoutAccents } from './asWritten.ts';
import { numberForms } from './numberForms.ts';

export interface Corrections {
  /** Lower-case words of a recogniser's text. Signs before digits become words, whichever minus was written. */
  wordsOf(text: string): string[];
  /** The correction these words say, such as "plus 7", "minus one two" or "zero"; null when they say none. */
  correctionIn(words: readonly string[]): Steps | null;
}

export function correctionsIn({ signs, numbers, misheardNumbers: { spellings }, parted = asIs }: Vocabulary): Corrections {
  const { say } = numbers;
  const [plus, minus] = [signs.plus, signs.minus].map((words) => words.map((word) => parted(word).trim())) as [string[], string[]];
  const wordsOf = (text: string): string[] =>
    parted(text)
      .toLowerCase()
      .replace(/\+/g, ` ${plus[0]} `)
      .replace(/(^|\s)[-\u2010-\u2015\u2212]\s*(?=\d)/g, ` ${minus[0]} `)
      .split(/[^\p{L}\p{N}]+/u)
      .filter(Boolean);
  const sizes = new Map<string, number>();
  /** Also without accents, as the matcher by sound hands them on. */
  const know = (words: string, size: number): void => {
    for (const spelt of [words, withoutAccents(words)]) sizes.set(wordsOf(spelt).join(' '), size);
  };
  for (let digit = 0; digit < 10; digit++) know(`${say(0)} ${say(digit)}`, digit);
  for (const { words, size } of numberForms(numbers)) know(words, size);

  /** "12", "twelve", "one two", "twenty 1"; null when the words are no whole number below a hundred. */
  const wholeNumber = (words: readonly string[]): number | null =>
    sizes.get(words.map((word) => (/^\d{1,2}$/.test(word) ? wordsOf(say(Number(word))).join(' ') : word)).join(' ')) ?? null;

  return {
    wordsOf,
    correctionIn(words) {
      const [first, ...rest] = words;
      if (first === undefined) return null;
      const sign = plus.includes(first) ? 1 : minus.includes(first) ? -1 : 0;
      if (sign === 0) return wholeNumber(words) === 0 ? steps(0) : null;
      const size = wholeNumber(rest.map((word) => spellings[word] ?? word));
      return size === null ? null : steps(size === 0 ? 0 : sign * size);
    },
  };
}
