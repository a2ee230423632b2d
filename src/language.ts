// The languages that the panel writes, speaks and understands.

/** By their names in BCP 47; the first is what is written where none of a person's own is there. */
export const LANGUAGES = ['en', 'de', 'es', 'fr', 'ja'] as const;
export type Language = (typeof LANGUAGES)[number];

/** `voice`: what the panel says and what it understands. */
export interface Languages {
  readonly screens: Language;
  readonly voice: Language;
}

/** What a person chose. */
export interface LanguageChoice {
  readonly screens: Language | 'browser';
  readonly voice: Language | 'screens';
}

export const isLanguage = (name: string): name is Language => (LANGUAGES as readonly string[]).includes(name);

/** The first of these tags, best liked first, whose language is there: `de-AT` is German. */
export function languageAmong(liked: readonly string[]): Language {
  const ours = liked.map((tag) => tag.toLowerCase().split(/[-_]/)[0] ?? '');
  return ours.find(isLanguage) ?? LANGUAGES[0];
}

export function languagesFor(choice: LanguageChoice, liked: readonly string[]): Languages {
  const screens = choice.screens === 'browser' ? languageAmong(liked) : choice.screens;
  return { screens, voice: choice.voice === 'screens' ? screens : choice.voice };
}
