// Every language that can be heard, read when it is wanted: as it is written, which is enough for the logbook and the buttons, and
// with its sounds for whoever listens.
import type { Language } from '../language.ts';
import type { HeardLanguage, Vocabulary } from './languages/heardLanguage.ts';

interface Heard {
  readonly written: () => Promise<Vocabulary>;
  readonly sounded: () => Promise<HeardLanguage>;
}

const ENGLISH: Heard = {
  written: async () => (await import('./languages/en/vocabulary.ts')).ENGLISH_WRITTEN,
  sounded: async () => (await import('./languages/en/english.ts')).ENGLISH,
};

const JAPANESE: Heard = {
  written: async () => (await import('./languages/ja/vocabulary.ts')).JAPANESE_WRITTEN,
  sounded: async () => (await import('./languages/ja/japanese.ts')).JAPANESE,
};

/** One that has no folder yet is heard in English. */
export const HEARD: Readonly<Record<Language, Heard>> = { en: ENGLISH, de: ENGLISH, es: ENGLISH, fr: ENGLISH, ja: JAPANESE };
