// What every page in a tab of its own begins with: it is in the languages that the panel wore last, with the measures of the country.
import { countryFor } from '../country.ts';
import { likedLanguages, rememberedDistances, rememberedLanguages, sayLanguage } from '../platform/language.ts';
import { changeLanguages } from '../words/catalogue.ts';
import { countryInUse } from '../words/countryInUse.ts';

/** Resolves when the words of the page can be read. */
export function wearPageLanguages(): Promise<void> {
  const languages = rememberedLanguages();
  countryInUse.value = countryFor(rememberedDistances(), likedLanguages());
  sayLanguage(languages);
  return changeLanguages(languages);
}
