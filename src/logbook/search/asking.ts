// How a spoken question is read in one language. Made once a language, when the first one is asked.
import type { Vocabulary } from '../../hearing/languages/heardLanguage.ts';
import { numberWordsIn, type NumberWords } from './numberWords.ts';
import { wordsIn } from './words.ts';

const read = new WeakMap<Vocabulary, NumberWords>();

function numberWordsOf(language: Vocabulary): NumberWords {
  const known = read.get(language) ?? numberWordsIn(language.numbers);
  read.set(language, known);
  return known;
}

const unmarked = ({ parted }: Vocabulary, phrase: string): string => (parted?.(phrase) ?? phrase).replace(/['’]/g, '');

/** Does it say nothing in a question? A name may still hold it. */
export const carriesNothing = ({ question }: Vocabulary, word: string): boolean => question.fillers.includes(word);

/** The words of a spoken question, its numbers in figures. */
export function askedWords(language: Vocabulary, phrase: string): string[] {
  const { digitsJoined, inFigures } = numberWordsOf(language);
  return wordsIn(inFigures(digitsJoined(unmarked(language, phrase))));
}

/** Is this a question in words rather than the beginnings of names? */
export const isQuestion = (language: Vocabulary, phrase: string): boolean => wordsIn(unmarked(language, phrase)).some((word) => carriesNothing(language, word));
