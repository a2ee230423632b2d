// The last value of each situation that answers what is typed into the address bar. The logbook is read when something is
// typed, kept while the browser lets this script live, and read anew when it has changed.
import { ENGLISH_WRITTEN } from '../hearing/languages/en/vocabulary.ts';
import { USUAL_LIMITS } from '../logbook/due.ts';
import { finderOf, lookUpSpoken, lookUpTyped, type Finder } from '../logbook/search/finder.ts';
import { shelfOf } from '../logbook/shelf.ts';
import { contentsOf } from '../logbook/stored.ts';
import { libraryOf } from '../logbook/storedLibrary.ts';
import type { Moment } from '../units.ts';
import type { LookUpWords } from '../words/lookUpWords.ts';

/** As many lines as the address bar has room for. */
const MOST = 8;

export function createLastValues(read: () => Promise<Record<string, unknown>>, now: () => Moment, say: LookUpWords) {
  let finder: Promise<Finder> | null = null;

  async function prepare(): Promise<Finder> {
    const { contents } = contentsOf(await read());
    const library = libraryOf(contents);
    return finderOf(ENGLISH_WRITTEN, library.kit, shelfOf(library, { at: now(), temperature: null }, USUAL_LIMITS));
  }

  return {
    /** The next answer reads the logbook anew. */
    forget(): void {
      finder = null;
    },
    async answer(typed: string): Promise<readonly string[]> {
      finder ??= prepare();
      try {
        const ready = await finder;
        const found = lookUpTyped(ready, typed);
        const lines = (found.length > 0 ? found : lookUpSpoken(ready, typed)).slice(0, MOST).map(say.line);
        return lines.length > 0 ? lines : [say.tryFewer];
      } catch {
        finder = null;
        return [say.unread];
      }
    },
  };
}
