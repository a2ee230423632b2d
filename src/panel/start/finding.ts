// Look-up on the start screen: the situations of the logbook that what is typed may mean.
import { answerOf } from '../../logbook/search/answer.ts';
import { finderOf, isQuestion, lookUpSpoken, lookUpTyped, type Finder } from '../../logbook/search/finder.ts';
import { shelfOf, type Shelved } from '../../logbook/shelf.ts';
import { USUAL_LIMITS } from '../../logbook/due.ts';
import { libraryIn } from '../logbook/libraryIn.ts';
import type { Session } from '../session/session.ts';
import { onDay } from '../words/quantities.ts';

export function finderIn(session: Session): Finder {
  const library = libraryIn(session);
  const shelf = shelfOf(library, { at: session.clock(), temperature: null }, USUAL_LIMITS);
  return finderOf(library.kit, shelf.filter(({ situation, retired }) => situation !== null && !retired));
}

export function lookUp(finder: Finder, query: string): readonly Shelved[] {
  if (query.trim() === '') return [];
  const typed = lookUpTyped(finder, query);
  return typed.length > 0 || !isQuestion(query) ? typed : lookUpSpoken(finder, query);
}

/** What the logbook says of it, to be heard. */
export const answerTo = (found: Shelved): string => answerOf([found], onDay);
