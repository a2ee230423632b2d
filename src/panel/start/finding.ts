// Look-up on the start screen: the situations of the logbook that what is typed may mean.
import { isQuestion } from '../../logbook/search/asking.ts';
import { finderOf, lookUpSpoken, lookUpTyped, type Finder } from '../../logbook/search/finder.ts';
import { shelfOf, type Shelved } from '../../logbook/shelf.ts';
import { USUAL_LIMITS } from '../../logbook/due.ts';
import { libraryOf } from '../../logbook/storedLibrary.ts';
import type { Contents } from '../../logbook/stored.ts';
import type { Moment } from '../../units.ts';
import { saidAndShown } from '../../words/catalogue.ts';
import type { InWords } from '../../words/inWords.ts';
import { vocabulary } from '../../words/taught.ts';

type Known = Pick<Contents, 'kit' | 'records' | 'byHand' | 'entries'>;

export function finderIn(known: Known, at: Moment): Finder {
  const library = libraryOf({ ...known, notes: [], proofs: [] });
  const shelf = shelfOf(library, { at, temperature: null }, USUAL_LIMITS);
  return finderOf(
    vocabulary(),
    library.kit,
    shelf.filter(({ situation, retired }) => situation !== null && !retired),
  );
}

export function lookUp(finder: Finder, query: string): readonly Shelved[] {
  if (query.trim() === '') return [];
  const typed = lookUpTyped(finder, query);
  return typed.length > 0 || !isQuestion(finder.language, query) ? typed : lookUpSpoken(finder, query);
}

/** What the logbook says of it, to be heard. */
export const answerTo = (found: Shelved): InWords => saidAndShown('lookUp', (say) => say.answer([found]));
