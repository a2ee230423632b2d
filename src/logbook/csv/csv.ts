// Comma-separated values after RFC 4180 (Shafranovich 2005): fields may be quoted, a quote inside is doubled, lines
// end in CRLF. Reading is lenient about line ends and about commas, semicolons or tabs as the mark between fields.
import { failed, got, type Result } from '../../result.ts';
import type { TableFault } from './fault.ts';

export type Delimiter = ',' | ';' | '\t';

/** One line of a table; `line` is where it begins in the file, counted from 1. */
export interface CsvLine {
  readonly line: number;
  readonly cells: readonly string[];
}

/** Writes lines of fields; every line ends in CRLF. */
export const writeCsv = (lines: readonly (readonly string[])[]): string => lines.map((cells) => `${cells.map(writeCell).join(',')}\r\n`).join('');

const writeCell = (cell: string): string => (/[",\r\n;\t]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** Reads the fields of every line that is not empty. A quote that never closes is the only fault. */
export function readCsv(text: string, delimiter: Delimiter = delimiterOf(text)): Result<CsvLine[], TableFault> {
  const lines: CsvLine[] = [];
  let cells: string[] = [];
  let line = 1;
  let began = 1;
  let at = text.startsWith('\uFEFF') ? 1 : 0;
  const end = (cell: string, next: number) => {
    cells.push(cell);
    at = next;
  };
  const endLine = () => {
    if (cells.length > 1 || cells[0] !== '') lines.push({ line: began, cells });
    cells = [];
    line++;
    began = line;
  };
  while (at < text.length) {
    if (text[at] === '"') {
      const close = closingQuote(text, at);
      if (close < 0) return failed({ is: 'open quote', line: began });
      const quoted = text.slice(at + 1, close);
      const after = plainEnd(text, close + 1, delimiter);
      line += quoted.split(/\r\n|\r|\n/).length - 1;
      end(quoted.replaceAll('""', '"') + text.slice(close + 1, after), after);
    } else {
      const next = plainEnd(text, at, delimiter);
      end(text.slice(at, next), next);
    }
    if (text[at] === delimiter) {
      at++;
      if (at === text.length) end('', at);
      continue;
    }
    at += text.startsWith('\r\n', at) ? 2 : 1;
    endLine();
  }
  if (cells.length > 0) endLine();
  return got(lines);
}

/** Where the quote opened at `open` closes: the first quote that is not doubled. */
function closingQuote(text: string, open: number): number {
  let at = text.indexOf('"', open + 1);
  while (at >= 0 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  return at;
}

function plainEnd(text: string, from: number, delimiter: Delimiter): number {
  let at = from;
  while (at < text.length && text[at] !== delimiter && text[at] !== '\r' && text[at] !== '\n') at++;
  return at;
}

/** The mark that parts most fields of the first line. */
function delimiterOf(text: string): Delimiter {
  const first = /^[^\r\n]*/.exec(text)?.[0] ?? '';
  const count = (mark: Delimiter) => first.split(mark).length;
  return ([';', '\t'] as const).reduce<Delimiter>((best, mark) => (count(mark) > count(best) ? mark : best), ',');
}
