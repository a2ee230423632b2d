// The languages of the screens, of what is said and of what is understood, as they are set: everything that is shown changes with them at
// once, when its words have been read. The browser's languages tell the country too; what distances are told in may be set.
import { computed, effect } from '@preact/signals';
import { countryFor } from '../../country.ts';
import { languagesFor } from '../../language.ts';
import { changeLanguages } from '../../words/catalogue.ts';
import { countryInUse } from '../../words/countryInUse.ts';
import { firstWords } from '../../words/first.ts';
import type { LibraryStore } from './library.ts';
import type { Ports } from './ports.ts';
import type { Mishaps } from './troubles.ts';

interface World extends Pick<Ports, 'languages'> {
  readonly library: Pick<LibraryStore, 'settings'>;
  readonly troubles: Mishaps;
}

/** Resolves when the languages that are set now are in use, or cannot be read. */
export function watchLanguages({ languages, library, troubles }: World): Promise<void> {
  const wanted = computed(() => {
    const { screens, voice } = languagesFor(library.settings.value.language, languages.liked());
    return `${screens} ${voice} ${library.settings.value.language.distances}`;
  });
  effect(() => {
    countryInUse.value = countryFor(library.settings.value.language.distances, languages.liked());
  });
  let changing = Promise.resolve();
  effect(() => {
    void wanted.value;
    changing = changing.then(change);
  });
  return changing;

  async function change(): Promise<void> {
    const chosen = library.settings.peek().language;
    const next = languagesFor(chosen, languages.liked());
    try {
      await changeLanguages(next);
      languages.wear(next, chosen.distances);
      troubles.clear('languages');
    } catch {
      troubles.add('languages', firstWords().unread);
    }
  }
}
