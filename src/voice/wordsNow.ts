// The spoken words that count at this moment, one by one: a value is told as "set", its sign and its
// digits, a question as "look up" and digits or the name of a lens.
import type { Vocabulary } from '../hearing/languages/heardLanguage.ts';
import type { Word } from '../sweep/inputs.ts';
import { spelledQuestions } from './ownWords/spelledQuestion.ts';
import { spelledValues } from './ownWords/spelledValue.ts';

/** `names`: of lenses, where the logbook may be asked; null where it may not. */
export function spokenWordsFor(language: Vocabulary, words: readonly Word[], names: readonly string[] | null): readonly string[] {
  return [
    ...words.map((word) => language.words[word].say),
    ...(words.includes('set') || names ? spelledValues(language).words : []),
    ...(names ? [spelledQuestions(language).word, ...names] : []),
  ];
}
