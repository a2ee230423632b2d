// The spoken words that count at this moment, one by one: a value is told as "set", its sign and its
// digits, a question as "look up" and digits or the name of a lens.
import type { Word } from '../sweep/inputs.ts';
import { LOOK_UP_WORD } from './ownWords/spelledQuestion.ts';
import { SPELLING_WORDS } from './ownWords/spelledValue.ts';
import { TAUGHT } from './vocabulary/en.ts';

/** `names`: of lenses, where the logbook may be asked; null where it may not. */
export const spokenWordsFor = (words: readonly Word[], names: readonly string[] | null): readonly string[] => [
  ...words.map((word) => TAUGHT[word]),
  ...(words.includes('set') || names ? SPELLING_WORDS : []),
  ...(names ? [LOOK_UP_WORD, ...names] : []),
];
