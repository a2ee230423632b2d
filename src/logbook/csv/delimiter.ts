// What parts the fields of a table: said by a first line such as `sep=;`, which spreadsheets write and obey, or else seen from the headings.

export type Delimiter = ',' | ';' | '\t' | '|';

/** The whole of such a line, the mark it names, and its end. */
export const SEPARATOR_LINE = /^\uFEFF?sep=([,;\t|])(\r\n|\r|\n|$)/i;

/** The mark that is named, or that parts most fields of the first line. */
export function delimiterOf(text: string): Delimiter {
  const named = SEPARATOR_LINE.exec(text)?.[1];
  if (named !== undefined) return named as Delimiter;
  const first = (/^[^\r\n]*/.exec(text)?.[0] ?? '').replace(/"[^"]*"/g, '');
  const count = (mark: Delimiter) => first.split(mark).length;
  return ([';', '\t'] as const).reduce<Delimiter>((best, mark) => (count(mark) > count(best) ? mark : best), ',');
}
