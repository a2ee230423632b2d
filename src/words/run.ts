// Sentences one after another, as the language they are in writes them: Japanese puts no space between two. Those that are not there are
// passed over.
import type { Language } from '../language.ts';
import { inUse } from './inUse.ts';

const SPACE: Readonly<Record<Language, string>> = { en: ' ', de: ' ', es: ' ', fr: ' ', ja: '' };

const STOP: Readonly<Record<Language, string>> = { en: '.', de: '.', es: '.', fr: '.', ja: '。' };

export const runIn = (language: Language, sentences: readonly (string | false | null | undefined)[]): string => sentences.filter(Boolean).join(SPACE[language]);

/** Short phrases as sentences of their own; those that are not there are passed over. */
export const sentencesIn = (language: Language, phrases: readonly (string | null)[]): string =>
  runIn(
    language,
    phrases.map((phrase) => phrase !== null && `${capital(phrase)}${STOP[language]}`),
  );

/** With a capital at its beginning, in a script that has them. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** As it stands after a colon. */
export const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** As the screens write them. */
export const run = (sentences: readonly (string | false | null | undefined)[]): string => runIn(inUse.value.screens, sentences);

/** A heading, or a phrase of a list, as a sentence of the screens: it ends as one, unless it does already. */
export const closed = (text: string): string => text.replace(/[^.:?!…。：？！]$/u, `$&${STOP[inUse.value.screens]}`);

/** What stands between two sentences on the screens, where one of them is marked. */
export const space = (): string => SPACE[inUse.value.screens];
