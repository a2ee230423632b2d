// The words in the groups in which they are taught, and what each group is for. The first is enough to run a sweep.
import { WORDS, type Word } from '../sweep/inputs.ts';
import { ENGLISH_WRITTEN } from '../hearing/languages/en/vocabulary.ts';
import { spelledQuestions } from './ownWords/spelledQuestion.ts';
import { spelledValues } from './ownWords/spelledValue.ts';

export type GroupName = 'sweep' | 'walk' | 'arrows' | 'values' | 'rest';

export interface WordGroup<Name = GroupName> {
  readonly is: Name;
  readonly words: readonly string[];
}

const inWords = (words: readonly Word[]): readonly string[] => words.map((word) => ENGLISH_WRITTEN.words[word].say);

const SWEEP: readonly Word[] = ['holding', 'solid', 'delayed', 'flicker', 'nothing', 'undo', 'accept'];
const WALK: readonly Word[] = ['next', 'back', 'repeat'];
const ARROWS: readonly Word[] = ['left', 'right', 'balanced', 'lopsided'];
const VALUES: readonly Word[] = ['set'];
const grouped: readonly Word[] = [...SWEEP, ...WALK, ...ARROWS, ...VALUES];

/** Seven carry a sweep from its first hold to the accepted value. */
export const FIRST_WORDS = inWords(SWEEP);

export const WORD_GROUPS: readonly WordGroup[] = [
  { is: 'sweep', words: FIRST_WORDS },
  { is: 'walk', words: inWords(WALK) },
  { is: 'arrows', words: inWords(ARROWS) },
  { is: 'values', words: [...inWords(VALUES), spelledQuestions(ENGLISH_WRITTEN).word, ...spelledValues(ENGLISH_WRITTEN).words] },
  { is: 'rest', words: inWords(WORDS.filter((word) => !grouped.includes(word))) },
];
