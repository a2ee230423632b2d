// More takes from confirmed holds: a word taken and not undone is one more example of how the person says it at the
// camera. What was taught on purpose is never dropped, and of what was learned the oldest makes room.
import type { Stretch } from './endpoints.ts';
import { takeOf, type Take } from './take.ts';
import { clearanceOf } from './takeQuality.ts';

/** More than this makes a word slower to compare and, by measurement, hardly better heard. */
export const LEARNED_AT_MOST = 5;
/** Only what was clearly heard and clearly the word may teach. */
const LEAST_CLEARANCE = 15;
const LEAST_SURENESS = 2;

/** The takes with this one learned, or the same list where it would not help. */
export function learn(takes: readonly Take[], word: string, stretch: Stretch, sureness: number): readonly Take[] {
  if (sureness < LEAST_SURENESS || clearanceOf(stretch) < LEAST_CLEARANCE) return takes;
  if (!takes.some((take) => take.word === word)) return takes;
  const learned = takes.filter((take) => take.word === word && take.from === 'learned');
  const dropped = learned.length >= LEARNED_AT_MOST ? learned[0] : null;
  return [...takes.filter((take) => take !== dropped), takeOf(word, stretch, 'learned')];
}

/** The takes without a word's, to teach it anew. */
export const forget = (takes: readonly Take[], word: string): readonly Take[] =>
  takes.filter((take) => take.word !== word);
