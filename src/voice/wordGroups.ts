// The words in the groups in which they are taught, and what each group is for. The first is enough to run a sweep.
import { WORDS, type Word } from '../sweep/inputs.ts';
import { ENGLISH_WRITTEN } from '../hearing/languages/en/vocabulary.ts';
import { spelledQuestions } from './ownWords/spelledQuestion.ts';
import { spelledValues } from './ownWords/spelledValue.ts';

export interface WordGroup {
  readonly name: string;
  /** What can be done by voice once they are taught. */
  readonly for: string;
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
  { name: 'A sweep', for: 'Enough for a whole sweep, from the first hold to the accepted value.', words: FIRST_WORDS },
  { name: 'The set-up walk', for: 'Go through the set-up walk; “repeat” also says a value again.', words: inWords(WALK) },
  { name: 'Arrows', for: 'For bodies that show arrows beside the focus light.', words: inWords(ARROWS) },
  {
    name: 'Values and the logbook',
    for: 'Set a value of your own, “set minus one two”, and ask the logbook, “look up eight five”.',
    words: [...inWords(VALUES), spelledQuestions(ENGLISH_WRITTEN).word, ...spelledValues(ENGLISH_WRITTEN).words],
  },
  { name: 'The rest', for: 'Pause, skip, go on, and what else a sweep may ask.', words: inWords(WORDS.filter((word) => !grouped.includes(word))) },
];
