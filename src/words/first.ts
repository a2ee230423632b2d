// The words that come with the panel's first script, and no area of the catalogue: the build draws the start into the page with
// them, in every language, before any script runs, and an area that cannot be read could not say so.
import { signal } from '@preact/signals';
import type { Language } from '../language.ts';
import { words as english } from './en/first.ts';
import type { FirstWords } from './firstWords.ts';
import { inUse } from './inUse.ts';

const FIRST: Readonly<Record<Exclude<Language, 'en'>, () => Promise<{ readonly words: FirstWords }>>> = {
  de: () => import('./de/first.ts'),
  es: () => import('./es/first.ts'),
  fr: () => import('./fr/first.ts'),
  ja: () => import('./ja/first.ts'),
};

const read = signal<Partial<Record<Language, FirstWords>>>({ en: english });

export async function readFirst(language: Language): Promise<void> {
  if (language === 'en' || read.peek()[language]) return;
  const { words } = await FIRST[language]();
  read.value = { ...read.peek(), [language]: words };
}

/** In English where the language of the screens cannot be read. */
export const firstWords = (): FirstWords => read.value[inUse.value.screens] ?? english;
