// Japanese as it is written, put together.
import { WORDS, type Word } from '../../../sweep/inputs.ts';
import type { HeardWord, Vocabulary } from '../heardLanguage.ts';
import { ALSO } from './also.ts';
import { AROUND, SETTING, SETTING_BEHIND, SIGNS } from './around.ts';
import { NAMING, QUESTION } from './asking.ts';
import { MISHEARD, MISHEARD_NUMBERS } from './misheard.ts';
import { NUMBERS } from './numbers.ts';
import { parted } from './parted.ts';
import { JAPANESE_TAG, TAUGHT } from './words.ts';

const heard = (word: Word): HeardWord => ({ say: TAUGHT[word], also: ALSO[word], misheard: MISHEARD[word] ?? [] });

export const JAPANESE_WRITTEN: Vocabulary = {
  tag: JAPANESE_TAG,
  parted,
  deniesBehind: true,
  words: Object.fromEntries(WORDS.map((word) => [word, heard(word)])) as Record<Word, HeardWord>,
  signs: SIGNS,
  setting: SETTING,
  around: { ...AROUND, courtesies: [...AROUND.courtesies, ...SETTING_BEHIND] },
  numbers: NUMBERS,
  misheardNumbers: MISHEARD_NUMBERS,
  question: { ...QUESTION, fillers: QUESTION.fillers.flatMap((word) => parted(word).trim().split(' ')) },
  naming: NAMING,
};
