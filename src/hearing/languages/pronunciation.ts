// How the words of a language sound, as data. Words are written in small letters without accents, as they are compared.
import type { Phones } from './sounds.ts';

export interface Pronunciation {
  /** Words that the rules below miss, with their sounds, as `listedWords` reads them. */
  readonly words: string;
  /**
   * Letters and their sounds, tried in this order at each place of a word; `^` and `$` bind to its start and end. `c/eiy` is a "c" before
   * one of the letters behind the stroke, which are left to the next rule.
   */
  readonly letters: readonly (readonly [letters: string, sounds: Phones])[];
  /** Endings that leave a word's sounds as they are: letters of the ending, its sounds, and letters that the word loses before it. */
  readonly endings: readonly (readonly [letters: string, sounds: Phones, lost?: string])[];
  /** A word that loses letters before an ending although the list does not hold it: "not" of "noting" is "note". */
  readonly shortened: RegExp;
  /** Letters that sound once where they are written twice. */
  readonly doubled: string;
  /** The vowel that is stressed in a word that is sounded by its letters. */
  readonly stress: 'first' | 'last but one' | 'last';
  /** Words that begin with a syllable that is weak: the next is stressed. */
  readonly weakly: RegExp;
}
