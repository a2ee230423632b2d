// What a screen without content says: what will stand there, and how it begins.
export interface EmptyWords {
  readonly logbook: Empty & { readonly begin: string };
  readonly plan: Empty & { readonly begin: string };
  /** A plan can be made; its form stands below. */
  readonly planned: Empty;
  readonly kit: Empty & { readonly begin: string };
  readonly photographs: Empty;
  readonly files: Empty;
}

interface Empty {
  readonly sentence: string;
  /** What the drawing shows, for those who hear the screen. */
  readonly drawn: string;
}
