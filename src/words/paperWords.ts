// What every page for paper says.
export interface PaperWords {
  readonly print: string;
}
