// What every page for paper says.
export interface PrintWords {
  readonly print: string;
}
