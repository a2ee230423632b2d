// What every page for paper says.
export interface PaperWords {
  readonly print: string;
  readonly sizes: Readonly<Record<'A6' | 'A4' | 'Letter', string>>;
}
