// The spoken words that count at this moment, one by one: a value is told as "set", its sign and its digits.
import type { Word } from '../sweep/inputs.ts';
import { SPELLING_WORDS } from './ownWords/spelledValue.ts';
import { TAUGHT } from './vocabulary/en.ts';

export const spokenWordsFor = (words: readonly Word[]): readonly string[] => [
  ...words.map((word) => TAUGHT[word]),
  ...(words.includes('set') ? SPELLING_WORDS : []),
];
