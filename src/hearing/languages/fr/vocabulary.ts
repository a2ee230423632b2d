// French as it is written, put together.
import { WORDS, type Word } from '../../../sweep/inputs.ts';
import type { HeardWord, Vocabulary } from '../heardLanguage.ts';
import { ALSO } from './also.ts';
import { AROUND, SETTING, SIGNS } from './around.ts';
import { NAMING, QUESTION } from './asking.ts';
import { MISHEARD, MISHEARD_NUMBERS } from './misheard.ts';
import { NUMBERS } from './numbers.ts';
import { FRENCH_TAG, TAUGHT } from './words.ts';

const heard = (word: Word): HeardWord => ({ say: TAUGHT[word], also: ALSO[word], misheard: MISHEARD[word] ?? [] });

export const FRENCH_WRITTEN: Vocabulary = {
  tag: FRENCH_TAG,
  words: Object.fromEntries(WORDS.map((word) => [word, heard(word)])) as Record<Word, HeardWord>,
  signs: SIGNS,
  setting: SETTING,
  around: AROUND,
  numbers: NUMBERS,
  misheardNumbers: MISHEARD_NUMBERS,
  question: QUESTION,
  naming: NAMING,
};
