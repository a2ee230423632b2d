// The languages of the screens, of what is said and of what is understood, as they are set: everything that is shown changes with them at
// once, when its words have been read. The browser's languages tell the country too, which no setting changes.
import { computed, effect } from '@preact/signals';
import { countryAmong } from '../../country.ts';
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
  countryInUse.value = countryAmong(languages.liked());
  const wanted = computed(() => {
    const { screens, voice } = languagesFor(library.settings.value.language, languages.liked());
    return `${screens} ${voice}`;
  });
  let changing = Promise.resolve();
  effect(() => {
    void wanted.value;
    changing = changing.then(change);
  });
  return changing;

  async function change(): Promise<void> {
    const next = languagesFor(library.settings.peek().language, languages.liked());
    try {
      await changeLanguages(next);
      languages.wear(next);
      troubles.clear('languages');
    } catch {
      troubles.add('languages', firstWords().unread);
    }
  }
}
