// German with its sounds, which only what listens reads.
import type { HeardLanguage } from '../heardLanguage.ts';
import { ENDINGS, LETTERS, WEAKLY } from './letters.ts';
import { PRONOUNCED } from './pronounced.ts';
import { GERMAN_WRITTEN } from './vocabulary.ts';

export const GERMAN: HeardLanguage = {
  ...GERMAN_WRITTEN,
  pronunciation: { words: PRONOUNCED, letters: LETTERS, endings: ENDINGS, shortened: /(?!)/, doubled: '', stress: 'first', weakly: WEAKLY },
};
