// French with its sounds.
import type { HeardLanguage } from '../heardLanguage.ts';
import { ENDINGS, LETTERS } from './letters.ts';
import { PRONOUNCED } from './pronounced.ts';
import { FRENCH_WRITTEN } from './vocabulary.ts';

const NONE = /(?!)/;

export const FRENCH: HeardLanguage = {
  ...FRENCH_WRITTEN,
  // Letters written twice are among the rules, as they open the vowel before them.
  pronunciation: { words: PRONOUNCED, letters: LETTERS, endings: ENDINGS, shortened: NONE, doubled: '', stress: 'last', weakly: NONE },
};
