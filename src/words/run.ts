// Sentences one after another, as the language they are in writes them: Japanese puts no space between two. Those that are not there are
// passed over.
import type { Language } from '../language.ts';
import { inUse } from './inUse.ts';

const SPACE: Readonly<Record<Language, string>> = { en: ' ', de: ' ', es: ' ', fr: ' ', ja: '' };

const STOP: Readonly<Record<Language, string>> = { en: '.', de: '.', es: '.', fr: '.', ja: '。' };

export const runIn = (language: Language, sentences: readonly (string | false | null | undefined)[]): string => sentences.filter(Boolean).join(SPACE[language]);

/** As the screens write them. */
export const run = (sentences: readonly (string | false | null | undefined)[]): string => runIn(inUse.value.screens, sentences);

/** A heading, or a phrase of a list, as a sentence of the screens: it ends as one, unless it does already. */
export const closed = (text: string): string => text.replace(/[^.:?!…。：？！]$/u, `$&${STOP[inUse.value.screens]}`);

/** What stands between two sentences on the screens, where one of them is marked. */
export const space = (): string => SPACE[inUse.value.screens];
