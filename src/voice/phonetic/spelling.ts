// How the words of a language sound, as data.
import type { Phones } from './phones.ts';

/** One file of data a language. */
export interface Spelling {
  /** `word sounds` pairs, one a line. */
  readonly words: string;
  /** Letters and their sounds, tried in this order at each place of a word; `^` and `$` bind to its start and end. */
  readonly letters: readonly (readonly [letters: string, sounds: Phones])[];
  /** Endings that leave a known word's sounds as they are: letters of the ending, its sounds. */
  readonly endings: readonly (readonly [letters: string, sounds: Phones])[];
}
