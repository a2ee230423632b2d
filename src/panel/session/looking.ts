// What the logbook says to a spoken question: the best answer for the ear, and the others beside it for the eye.
import { USUAL_LIMITS } from '../../logbook/due.ts';
import { answerOf, lineOf } from '../../logbook/search/answer.ts';
import { finderOf, lookUpSpoken } from '../../logbook/search/finder.ts';
import { shelfOf } from '../../logbook/shelf.ts';
import type { Moment } from '../../units.ts';
import type { InWords } from '../../voice/outcomes.ts';
import { libraryIn } from './libraryIn.ts';
import { onDay } from '../words/quantities.ts';
import type { LibraryStore } from './library.ts';

/** As many as a person reads at a glance. */
const SHOWN = 4;

export function lookedUp(library: LibraryStore, question: string, at: Moment): InWords {
  const logbook = libraryIn(library);
  const finder = finderOf(logbook.kit, shelfOf(logbook, { at, temperature: null }, USUAL_LIMITS));
  const found = lookUpSpoken(finder, question).slice(0, SHOWN);
  const [best, ...others] = found;
  const written = answerOf(best ? [best] : [], onDay);
  const also = others.length === 0 ? '' : ` Also: ${others.map(lineOf).join('; ')}.`;
  return { spoken: answerOf(found, onDay), written: `${written}${also}` };
}
