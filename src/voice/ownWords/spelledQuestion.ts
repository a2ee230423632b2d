// A question to the logbook told in taught words, one at a time: "look up", then digits, or the name of a lens that was
// taught. It is complete when nothing more comes, and is then one text for the same reader as every other question.
import { ONES } from '../vocabulary/en.ts';
import { LOOK_UP } from '../vocabulary/heard.ts';
import type { Spelling } from './spelledValue.ts';

/** The word to teach for it. */
export const LOOK_UP_WORD: string = LOOK_UP[0] ?? '';

const DIGITS: readonly string[] = ONES.slice(0, 10);
/** Longer than between two digits of a value: a serial number is read off the lens meanwhile. Common practice, no source. */
const PAUSE = 2;
/** As long as serial numbers are. */
const MOST = 12;

/** The question with this word added; null when it does not belong to one. `names`: the taught names of lenses. */
export function asked(before: Spelling | null, word: string, ended: number, names: readonly string[]): Spelling | null {
  const words = before?.words ?? [];
  const fits = word === LOOK_UP_WORD ? words.length === 0 : words[0] === LOOK_UP_WORD && words.length <= MOST && (DIGITS.includes(word) || names.includes(word));
  return fits ? { words: [...words, word], last: ended } : null;
}

/** The text once nothing more came in time. Null while more may come. */
export const wholeQuestion = ({ words, last }: Spelling, now: number): string | null => (now - last > PAUSE ? words.join(' ') : null);

export const isQuestion = ({ words }: Spelling): boolean => words[0] === LOOK_UP_WORD;
