// Places where the change was looked into and shown to change nothing that can be told from outside. By file and by what the line
// says, so that an entry goes out of use when its line is rewritten.
export interface Same {
  readonly file: string;
  /** A piece of the line as it is written. */
  readonly line: string;
  readonly after: string;
  readonly why: string;
}
