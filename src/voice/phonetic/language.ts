// What the matcher needs to know of a language, gathered from its data files.
import * as english from '../vocabulary/en.ts';
import { ENGLISH } from '../pronunciation/en.ts';
import { pronouncer } from './pronunciation.ts';

export interface Language {
  readonly taught: typeof english.TAUGHT;
  /** Spellings known to come back for a word beside those that sound like it. */
  readonly misheard: typeof english.MISHEARD;
  /** Words that say nothing. */
  readonly fillers: readonly string[];
  /** What "set" is put into: "set it to". */
  readonly setting: readonly string[];
  readonly signs: typeof english.SIGNS;
  readonly numberSpellings: typeof english.NUMBER_SPELLINGS;
  readonly lookUp: readonly string[];
  readonly pronounce: (word: string) => string;
}

export const englishLanguage = (): Language => ({
  taught: english.TAUGHT,
  misheard: english.MISHEARD,
  fillers: english.FILLERS,
  setting: english.SETTING,
  signs: english.SIGNS,
  numberSpellings: english.NUMBER_SPELLINGS,
  lookUp: english.LOOK_UP,
  pronounce: pronouncer(ENGLISH),
});
