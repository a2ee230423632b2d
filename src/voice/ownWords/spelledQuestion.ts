// A question to the logbook told in taught words, one at a time: "look up", then digits, or the name of a lens that was
// taught. It is complete when nothing more comes, and is then one text for the same reader as every other question.
import type { Vocabulary } from '../../hearing/languages/heardLanguage.ts';
import { digitsOf } from './digits.ts';
import type { WordByWord } from './spelledValue.ts';

export interface SpelledQuestions {
  /** The word to teach for them. */
  readonly word: string;
  /** What was told with this word added; null when it does not belong to a question. `names`: the taught names of lenses. */
  asked(before: WordByWord | null, word: string, ended: number, names: readonly string[]): WordByWord | null;
  isQuestion(told: WordByWord): boolean;
}

/** Longer than between two digits of a value: a serial number is read off the lens meanwhile. Common practice, no source. */
const PAUSE = 2;
/** As long as serial numbers are. */
const MOST = 12;

export function spelledQuestions({ question, numbers }: Vocabulary): SpelledQuestions {
  const digits = digitsOf(numbers);
  const [opening] = question.openings;
  return {
    word: opening,
    asked(before, word, ended, names) {
      const words = before?.words ?? [];
      const fits = word === opening ? words.length === 0 : words[0] === opening && words.length <= MOST && (digits.includes(word) || names.includes(word));
      return fits ? { words: [...words, word], last: ended } : null;
    },
    isQuestion: ({ words }) => words[0] === opening,
  };
}

/** The text once nothing more came in time. Null while more may come. */
export const wholeQuestion = ({ words, last }: WordByWord, now: number): string | null => (now - last > PAUSE ? words.join(' ') : null);
