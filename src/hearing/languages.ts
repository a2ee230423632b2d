// Every language that can be heard, read when it is wanted: as it is written, which is enough for the logbook and the buttons, and
// with its sounds for whoever listens.
import type { Language } from '../language.ts';
import type { HeardLanguage, Vocabulary } from './languages/heardLanguage.ts';

interface Heard {
  readonly written: () => Promise<Vocabulary>;
  readonly sounded: () => Promise<HeardLanguage>;
}

export const HEARD: Readonly<Record<Language, Heard>> = {
  en: {
    written: async () => (await import('./languages/en/vocabulary.ts')).ENGLISH_WRITTEN,
    sounded: async () => (await import('./languages/en/english.ts')).ENGLISH,
  },
  de: {
    written: async () => (await import('./languages/de/vocabulary.ts')).GERMAN_WRITTEN,
    sounded: async () => (await import('./languages/de/german.ts')).GERMAN,
  },
  es: {
    written: async () => (await import('./languages/es/vocabulary.ts')).SPANISH_WRITTEN,
    sounded: async () => (await import('./languages/es/spanish.ts')).SPANISH,
  },
  fr: {
    written: async () => (await import('./languages/fr/vocabulary.ts')).FRENCH_WRITTEN,
    sounded: async () => (await import('./languages/fr/french.ts')).FRENCH,
  },
  ja: {
    written: async () => (await import('./languages/ja/vocabulary.ts')).JAPANESE_WRITTEN,
    sounded: async () => (await import('./languages/ja/japanese.ts')).JAPANESE,
  },
};
