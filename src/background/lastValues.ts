// The last value of each situation that answers what is typed into the address bar. The logbook is read when something is
// typed, kept while the browser lets this script live, and read anew when it has changed.
import { countryFor } from '../country.ts';
import { languageAmong, languagesFor } from '../language.ts';
import { USUAL_LIMITS } from '../logbook/due.ts';
import { finderOf, lookUpSpoken, lookUpTyped, type Finder } from '../logbook/search/finder.ts';
import { shelfOf } from '../logbook/shelf.ts';
import { contentsOf } from '../logbook/stored.ts';
import { libraryOf } from '../logbook/storedLibrary.ts';
import type { Moment } from '../units.ts';
import { countryInUse } from '../words/countryInUse.ts';
import type { LookUpWords } from '../words/lookUpWords.ts';
import { LOOKING_UP } from './lookingUp.ts';

/** As many lines as the address bar has room for. */
const MOST = 8;

interface Ready {
  readonly finder: Finder;
  readonly say: LookUpWords;
}

/** `liked`: the browser's languages, best liked first. */
export function createLastValues(read: () => Promise<Record<string, unknown>>, now: () => Moment, liked: () => readonly string[]) {
  let reading: Promise<Ready> | null = null;

  async function prepare(): Promise<Ready> {
    const { contents } = contentsOf(await read());
    const library = libraryOf(contents);
    countryInUse.value = countryFor(contents.settings.language.distances, liked());
    const { say, asked } = LOOKING_UP[languagesFor(contents.settings.language, liked()).screens];
    return { say, finder: finderOf(asked, library.kit, shelfOf(library, { at: now(), temperature: null }, USUAL_LIMITS)) };
  }

  return {
    /** The next answer reads the logbook anew. */
    forget(): void {
      reading = null;
    },
    async answer(typed: string): Promise<readonly string[]> {
      reading ??= prepare();
      try {
        const { finder, say } = await reading;
        const found = lookUpTyped(finder, typed);
        const lines = (found.length > 0 ? found : lookUpSpoken(finder, typed)).slice(0, MOST).map(say.line);
        return lines.length > 0 ? lines : [say.tryFewer];
      } catch {
        reading = null;
        return [LOOKING_UP[languageAmong(liked())].say.unread];
      }
    },
  };
}
