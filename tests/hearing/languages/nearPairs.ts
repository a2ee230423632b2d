// Pairs that sound more alike than the nearest of their kind in English, each with the reason why it may stay, and how near it may be.
import type { Language } from '../../../src/language.ts';

interface NearPair {
  readonly language: Language;
  readonly pair: readonly [string, string];
  /** At least so far apart. */
  readonly least: number;
  readonly why: string;
}

export const NEAR_PAIRS: readonly NearPair[] = [
  { language: 'fr', pair: ['droite', 'trois'], least: 0.22, why: 'a number counts behind a sign or in a question, an arrow stands alone' },
  { language: 'ja', pair: ['入力', 'じゅうろく'], least: 0.31, why: 'a number counts behind a sign or in a question, and no value is set at a result' },
  { language: 'es', pair: ['diecisiete', 'diecinueve'], least: 0.26, why: 'they differ in one sound; what is not heard as one of them whole is asked about' },
];
