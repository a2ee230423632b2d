// Languages by their names, as the browser knows them.
import type { Language } from '../language.ts';
import { inUse } from './inUse.ts';

const nameIn = (of: Language, language: Language): string => new Intl.DisplayNames(language, { type: 'language' }).of(of) ?? of;

/** By its own name, as whoever speaks it looks for it: "Deutsch". */
export function ownName(language: Language): string {
  const name = nameIn(language, language);
  return name.charAt(0).toLocaleUpperCase(language) + name.slice(1);
}

/** What is spoken and understood, in the language of the sentence that names it, or else of the screens: "German". */
export const voiceNamed = (language: Language = inUse.value.screens): string => nameIn(inUse.value.voice, language);
