// The words in the groups in which they are taught, and what each group is for. The first is enough to run a sweep.
import type { Vocabulary } from '../hearing/languages/heardLanguage.ts';
import { WORDS, type Word } from '../sweep/inputs.ts';
import { spelledQuestions } from './ownWords/spelledQuestion.ts';
import { spelledValues } from './ownWords/spelledValue.ts';

export type GroupName = 'sweep' | 'walk' | 'arrows' | 'values' | 'rest';

export interface WordGroup<Name = GroupName> {
  readonly is: Name;
  readonly words: readonly string[];
}

/** Seven carry a sweep from its first hold to the accepted value. */
const SWEEP: readonly Word[] = ['holding', 'solid', 'delayed', 'flicker', 'nothing', 'undo', 'accept'];
const WALK: readonly Word[] = ['next', 'back', 'repeat'];
const ARROWS: readonly Word[] = ['left', 'right', 'balanced', 'lopsided'];
const VALUES: readonly Word[] = ['set'];
const grouped: readonly Word[] = [...SWEEP, ...WALK, ...ARROWS, ...VALUES];

const said = (language: Vocabulary, words: readonly Word[]): readonly string[] => words.map((word) => language.words[word].say);

/** How many carry a sweep. */
export const FIRST_COUNT = SWEEP.length;

/** Those that carry a sweep, as they are said. */
export const firstWordsIn = (language: Vocabulary): readonly string[] => said(language, SWEEP);

export function wordGroupsIn(language: Vocabulary): readonly WordGroup[] {
  const inWords = (words: readonly Word[]): readonly string[] => said(language, words);
  return [
    { is: 'sweep', words: inWords(SWEEP) },
    { is: 'walk', words: inWords(WALK) },
    { is: 'arrows', words: inWords(ARROWS) },
    { is: 'values', words: [...inWords(VALUES), spelledQuestions(language).word, ...spelledValues(language).words] },
    { is: 'rest', words: inWords(WORDS.filter((word) => !grouped.includes(word))) },
  ];
}
