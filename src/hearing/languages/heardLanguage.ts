// What a language needs to be heard, as data. The matcher knows this interface and no language; each language is a folder of
// its own beside this file, and words the program speaks are no part of it.
import type { Word } from '../../sweep/inputs.ts';
import type { Pronunciation } from './pronunciation.ts';

/** A language as it is written: enough for a question to the logbook and for words that a person taught. */
export interface Vocabulary {
  /** BCP 47. */
  readonly tag: string;
  readonly words: Readonly<Record<Word, HeardWord>>;
  /** Words for the sign of a correction; the first of each is the one that is taught. */
  readonly signs: { readonly plus: SignWords; readonly minus: SignWords };
  /** What may stand before a value: "set it to". */
  readonly setting: readonly string[];
  readonly around: SaysNothing;
  readonly numbers: SaidNumbers;
  readonly misheardNumbers: MisheardNumbers;
  readonly question: SpokenQuestion;
  readonly naming: Naming;
  /**
   * Of a language that is written without blanks, or in more ways than one: a text with its words parted by blanks, each spelt in one
   * way. Signs and figures are left to the matcher; `say` and `zeros` of the numbers are spelt in this way already.
   */
  parted?(text: string): string;
  /** What denies a word stands behind it, so that no word is sure before the person has stopped. */
  readonly deniesBehind?: true;
}

/** The same with how its words sound. */
export interface HeardLanguage extends Vocabulary {
  readonly pronunciation: Pronunciation;
}

export interface HeardWord {
  /** What a person is taught to say. */
  readonly say: string;
  readonly also: readonly string[];
  /** What comes back for it although it does not sound like it enough to be found by its sound. */
  readonly misheard: readonly string[];
}

/** What stands around what is told and says nothing. */
export interface SaysNothing {
  /** Said to whoever is told something, or while thinking, before and after it; sounds of hesitation are found by their sound, too. */
  readonly courtesies: readonly string[];
  readonly articles: readonly string[];
  /** What makes a statement of a word: "it was …". */
  readonly frames: readonly string[];
  /** When and where. */
  readonly places: readonly string[];
  /** Words that mean something else in daily talk: a statement of one of them is not meant for the panel. */
  readonly everyday: readonly Word[];
}

type SignWords = readonly [taught: string, ...also: string[]];

/** Numbers as they are said. The forms to be heard are made of `say`: whole, digit by digit, "one thirty-five" for 135. */
export interface SaidNumbers {
  /** A whole number from 0 to 1999 in words. */
  say(whole: number): string;
  /** Other ways of saying it: "a hundred and five". */
  also(whole: number): readonly string[];
  /** A zero inside a number, beside `say(0)`: "one oh five". */
  readonly zeros: readonly string[];
  /** What parts the whole from its decimals. */
  readonly point: string;
  /** A single letter that a digit may follow in a name, "M one"; not one that is a word by itself. */
  readonly letter: RegExp;
  /** What is written after the figures of an ordinal: "1st". */
  readonly ordinals: readonly string[];
}

export interface MisheardNumbers {
  /** How a recogniser spells number words; understood only right after a sign, where nothing else can stand. */
  readonly spellings: Readonly<Record<string, string>>;
  /** Numbers that sound so much alike that one is never taken where only the other is possible. */
  readonly takenFor: readonly (readonly [heard: number, meant: number])[];
}

export interface SpokenQuestion {
  /** What begins a question to the logbook; the first is the one that is taught. */
  readonly openings: readonly [taught: string, ...also: string[]];
  /** What begins one only where a number or a known name follows, as other questions begin so, too; the longest counts. */
  readonly everyday: readonly string[];
  /** What ends one in a language whose verb stands last; counts where a number or a known name stands before it. */
  readonly closings?: readonly string[];
  /** Words that carry nothing in one. */
  readonly fillers: readonly string[];
}

/** The next lens, said with its name: "next lens Corvid eighty-five". */
export interface Naming {
  /** What stands before the name, longest first. */
  readonly openings: readonly string[];
  /** What may follow them and is no name. */
  readonly noNames: readonly string[];
  /** What parts them from the name, as a regular expression; blanks where nothing is given. */
  readonly between?: string;
}
