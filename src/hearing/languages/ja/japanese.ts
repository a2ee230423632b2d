// Japanese with its sounds.
import type { HeardLanguage } from '../heardLanguage.ts';
import { LETTERS } from './letters.ts';
import { JAPANESE_WRITTEN } from './vocabulary.ts';

export const JAPANESE: HeardLanguage = {
  ...JAPANESE_WRITTEN,
  pronunciation: { words: '', letters: LETTERS, endings: [], shortened: /(?!)/, doubled: '', stress: 'first', weakly: /(?!)/ },
};
