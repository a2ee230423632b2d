// English with its sounds: thousands of words long, so only what listens reads it.
import type { HeardLanguage } from '../heardLanguage.ts';
import { DOUBLED, ENDINGS, LETTERS, SHORTENED, WEAKLY } from './letters.ts';
import { PRONOUNCED } from './pronounced.ts';
import { ENGLISH_WRITTEN } from './vocabulary.ts';

export const ENGLISH: HeardLanguage = {
  ...ENGLISH_WRITTEN,
  pronunciation: { words: PRONOUNCED, letters: LETTERS, endings: ENDINGS, shortened: SHORTENED, doubled: DOUBLED, stress: 'first', weakly: WEAKLY },
};
