// The language of the pages: what the person likes, as the browser tells it, and what was worn last, remembered where the first script finds
// it before the first frame; the settings are read later.
import { isDistances, type Distances } from '../country.ts';
import { isLanguage, languageAmong, type Languages } from '../language.ts';

const REMEMBERED = 'language';

/** Best liked first. */
export const likedLanguages = (): readonly string[] => navigator.languages;

/** Those worn last; before there were any, the browser's. */
export function rememberedLanguages(): Languages {
  const [screens = languageAmong(likedLanguages()), voice = screens] = remembered().split(' ').filter(isLanguage);
  return { screens, voice };
}

/** What distances were told in last, as it was chosen. */
export const rememberedDistances = (): Distances => remembered().split(' ').find(isDistances) ?? 'country';

/** The page says its language: by that the browser breaks lines, and a screen reader speaks. */
export function sayLanguage({ screens }: Languages): void {
  if (document.documentElement.lang !== screens) document.documentElement.lang = screens;
}

/** The same, and remembered from now on with what distances are told in. */
export function wearLanguages(languages: Languages, distances: Distances): void {
  const { screens, voice } = languages;
  sayLanguage(languages);
  try {
    localStorage.setItem(REMEMBERED, `${screens} ${voice} ${distances}`);
  } catch {
    // Without it the panel only begins in the browser's language.
  }
}

function remembered(): string {
  try {
    return localStorage.getItem(REMEMBERED) ?? '';
  } catch {
    // Site data may be forbidden.
    return '';
  }
}
