// What the matcher needs to know of a language, gathered from its data files.
import { WORDS, type Word } from '../../sweep/inputs.ts';
import { TAUGHT } from '../vocabulary/en.ts';
import * as english from '../vocabulary/heard.ts';
import { ENGLISH } from '../pronunciation/en.ts';
import { pronouncer } from './pronunciation.ts';

export interface Language {
  readonly taught: Readonly<Record<Word, { readonly say: string; readonly also: readonly string[] }>>;
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
  taught: Object.fromEntries(
    WORDS.map((word) => [word, { say: TAUGHT[word], also: english.ALSO[word] }]),
  ) as unknown as Language['taught'],
  misheard: english.MISHEARD,
  fillers: english.FILLERS,
  setting: english.SETTING,
  signs: english.SIGNS,
  numberSpellings: english.NUMBER_SPELLINGS,
  lookUp: english.LOOK_UP,
  pronounce: pronouncer(ENGLISH),
});
