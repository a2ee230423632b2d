// How sure a value is, in words: less than a sweep asks for says so.
import { SURE } from '../../sweep/end/care.ts';
import { inPercent } from '../words/quantities.ts';
import { RESULT_WORDS } from './words.ts';

export function sureInWords(within: number): string {
  const percent = inPercent(within);
  return within < SURE ? RESULT_WORDS.notYetSure({ percent }) : RESULT_WORDS.sure({ percent });
}
