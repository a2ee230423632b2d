// What the logbook says to a spoken question: the best answer for the ear, and the others beside it for the eye.
import { USUAL_LIMITS } from '../../logbook/due.ts';
import { finderOf, lookUpSpoken } from '../../logbook/search/finder.ts';
import { shelfOf } from '../../logbook/shelf.ts';
import type { Moment } from '../../units.ts';
import { aloud, readWords, words } from '../../words/catalogue.ts';
import type { InWords } from '../../words/inWords.ts';
import { libraryIn } from './libraryIn.ts';
import type { LibraryStore } from './library.ts';
import { vocabulary } from '../../words/taught.ts';

/** As many as a person reads at a glance. */
const SHOWN = 4;

export async function lookedUp(library: LibraryStore, question: string, at: Moment): Promise<InWords> {
  await readWords('lookUp');
  const logbook = libraryIn(library);
  const finder = finderOf(vocabulary(), logbook.kit, shelfOf(logbook, { at, temperature: null }, USUAL_LIMITS));
  const found = lookUpSpoken(finder, question).slice(0, SHOWN);
  return { spoken: aloud('lookUp').answer(found), written: words('lookUp').listed(found) };
}
