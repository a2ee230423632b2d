// What Sweepbook is: its version, what is new in it, what becomes of the data, and whose work is in it.

export interface AboutWords {
  readonly title: string;
  readonly version: (version: string) => string;
  /** One line on the start after an update, which leads to what is new. */
  readonly updated: (version: string) => string;
  readonly news: {
    readonly title: string;
    /** Newest first; a version that nobody would notice has no line here. */
    readonly of: readonly { readonly version: string; readonly lines: readonly string[] }[];
  };
  readonly privacy: { readonly title: string; readonly sentences: readonly string[] };
  readonly licences: { readonly title: string; readonly about: string; readonly open: string };
  readonly fault: {
    readonly title: string;
    /** What is in the file, and what is not. */
    readonly about: string;
    /** Nothing is sent, and where the file is to go. */
    readonly give: string;
    readonly save: string;
  };
}
