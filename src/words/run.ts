// Sentences one after another, as the language they are in writes them: Japanese puts no space between two. Those that are not there are
// passed over.
import type { Language } from '../language.ts';
import { inUse } from './inUse.ts';

const SPACE: Readonly<Record<Language, string>> = { en: ' ', de: ' ', es: ' ', fr: ' ', ja: '' };

export const runIn = (language: Language, sentences: readonly (string | false | null | undefined)[]): string => sentences.filter(Boolean).join(SPACE[language]);

/** As the screens write them. */
export const run = (sentences: readonly (string | false | null | undefined)[]): string => runIn(inUse.value.screens, sentences);

/** What stands between two sentences on the screens, where one of them is marked. */
export const space = (): string => SPACE[inUse.value.screens];
