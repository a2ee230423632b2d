// Japanese: what a recogniser writes down for something else that was said.
import type { Word } from '../../../sweep/inputs.ts';
import type { MisheardNumbers } from '../heardLanguage.ts';
import { otherWays, sayKana } from './numbers.ts';

/** Spellings that come back for a word although they do not sound like it enough to be found by their sound. */
export const MISHEARD: Partial<Record<Word, readonly string[]>> = {
  nothing: ['使ない'],
  back: ['戻す', '元る'],
};

/** The other ways of saying a number are as good, right after a sign. */
export const MISHEARD_NUMBERS: MisheardNumbers = {
  spellings: Object.fromEntries(Array.from({ length: 100 }, (_, whole) => whole).flatMap((whole) => otherWays(whole).map((way) => [way, sayKana(whole)]))),
  takenFor: [],
};
