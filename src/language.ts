// The languages that the panel writes, speaks and understands.

/** By their names in BCP 47; the first is what is written where none of a person's own is there. */
export const LANGUAGES = ['en', 'de', 'es', 'fr', 'ja'] as const;
export type Language = (typeof LANGUAGES)[number];

/** The first of these tags, best liked first, whose language is there: `de-AT` is German. */
export function languageAmong(liked: readonly string[]): Language {
  const ours = liked.map((tag) => LANGUAGES.find((language) => language === tag.toLowerCase().split(/[-_]/)[0]));
  return ours.find((language) => language !== undefined) ?? LANGUAGES[0];
}
