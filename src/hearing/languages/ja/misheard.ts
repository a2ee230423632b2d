// Japanese: what a recogniser writes down for something else that was said.
import type { Word } from '../../../sweep/inputs.ts';
import type { MisheardNumbers } from '../heardLanguage.ts';
import { otherWays, sayKana } from './numbers.ts';

/** Spellings that come back for a word although they do not sound like it enough to be found by their sound. */
export const MISHEARD: Partial<Record<Word, readonly string[]>> = {
  delayed: ['お暮れ', 'お呉れ', '送れ', '送れた'],
  left: ['非だり', '日だり'],
  nothing: ['着かない', '付かない', '就かない', '突かない', '使ない'],
  shifted: ['図れた', '擦れた', '逸れた'],
  resume: ['再会', '最下位', '再会して'],
  next: ['継ぎへ', '継ぎ'],
  back: ['戻す', 'も取る'],
};

/** The other ways of saying a number are as good, right after a sign. */
export const MISHEARD_NUMBERS: MisheardNumbers = {
  spellings: Object.fromEntries(Array.from({ length: 100 }, (_, whole) => whole).flatMap((whole) => otherWays(whole).map((way) => [way, sayKana(whole)]))),
  takenFor: [],
};
