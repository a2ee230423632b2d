// What every page in a tab of its own begins with: it is in the languages that the panel wore last.
import { rememberedLanguages, wearLanguages } from '../platform/language.ts';
import { changeLanguages } from '../words/catalogue.ts';

/** Resolves when the words of the page can be read. */
export function wearPageLanguages(): Promise<void> {
  const languages = rememberedLanguages();
  wearLanguages(languages);
  return changeLanguages(languages);
}
