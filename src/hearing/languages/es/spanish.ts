// Spanish with its sounds.
import type { HeardLanguage } from '../heardLanguage.ts';
import { DOUBLED, ENDINGS, LETTERS, WEAKLY } from './letters.ts';
import { PRONOUNCED } from './pronounced.ts';
import { SPANISH_WRITTEN } from './vocabulary.ts';

export const SPANISH: HeardLanguage = {
  ...SPANISH_WRITTEN,
  pronunciation: {
    words: PRONOUNCED,
    letters: LETTERS,
    endings: ENDINGS,
    // No word loses a letter before an ending.
    shortened: /(?!)/,
    doubled: DOUBLED,
    stress: 'last but one',
    weakly: WEAKLY,
  },
};
