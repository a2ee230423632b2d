// Tables as text after RFC 4180 (Shafranovich 2005): fields may be quoted, a quote inside is doubled, lines end in CRLF. Reading is
// lenient about line ends and about what parts the fields, and strict about quotes: what could be read in two ways is told with its line.
// Our own, since of the kept libraries the thorough one adds 7 kB to the panel where this adds 0.6, and none tells the line of the file
// at which a field of several lines begins or a quote is astray.
import { failed, got, type Result } from '../../result.ts';
import { delimiterOf, SEPARATOR_LINE, type Delimiter } from './delimiter.ts';
import type { TableFault } from './fault.ts';

/** One line of a table; `line` is where it begins in the file, counted from 1. */
export interface CsvLine {
  readonly line: number;
  readonly cells: readonly string[];
}

/** Writes lines of fields; every line ends in CRLF. */
export function writeCsv(lines: readonly (readonly string[])[], delimiter: Delimiter = ','): string {
  return lines.map((cells) => `${cells.map((cell) => writeCell(cell, delimiter)).join(delimiter)}\r\n`).join('');
}

/** Blanks at either end are kept by quotes, and what reads like a line that names the separator is a field in them. */
const QUOTED = /["\r\n]|^\s|\s$|^sep=/i;
const writeCell = (cell: string, delimiter: Delimiter): string => (cell.includes(delimiter) || QUOTED.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** A field, and where it ended. */
interface Field {
  readonly cell: string;
  readonly end: number;
}

/** Reads the fields of every line that is not empty. */
export function readCsv(text: string, delimiter: Delimiter = delimiterOf(text)): Result<CsvLine[], TableFault> {
  const lines: CsvLine[] = [];
  const named = SEPARATOR_LINE.exec(text);
  let cells: string[] = [];
  let line = named?.[2] ? 2 : 1;
  let began = line;
  let at = named ? named[0].length : text.startsWith('\uFEFF') ? 1 : 0;
  const endLine = () => {
    if (cells.length > 1 || cells[0] !== '') lines.push({ line: began, cells });
    cells = [];
    began = ++line;
  };
  while (at < text.length) {
    const open = skipBlanks(text, at, delimiter);
    const quoted = text[open] === '"';
    const field = quoted ? quotedField(text, open, delimiter) : plainField(text, at, delimiter);
    if (field === null) return failed({ is: 'open quote', line });
    line += quoted ? lineEndsIn(field.cell) : 0;
    if (!isEnd(text, field.end, delimiter) || (!quoted && field.cell.includes('"'))) return failed({ is: 'stray quote', line });
    cells.push(quoted ? field.cell.replaceAll('""', '"') : field.cell);
    at = field.end;
    if (text[at] === delimiter) {
      at++;
      if (at === text.length) cells.push('');
      continue;
    }
    at += text.startsWith('\r\n', at) ? 2 : 1;
    endLine();
  }
  if (cells.length > 0) endLine();
  return got(lines);
}

/** What stands between the quote at `open` and the one that closes it, the first that is not doubled; blanks after that are none of the field. */
function quotedField(text: string, open: number, delimiter: Delimiter): Field | null {
  let close = text.indexOf('"', open + 1);
  while (close >= 0 && text[close + 1] === '"') close = text.indexOf('"', close + 2);
  return close < 0 ? null : { cell: text.slice(open + 1, close), end: skipBlanks(text, close + 1, delimiter) };
}

function plainField(text: string, from: number, delimiter: Delimiter): Field {
  let end = from;
  while (!isEnd(text, end, delimiter)) end++;
  return { cell: text.slice(from, end), end };
}

const isEnd = (text: string, at: number, delimiter: Delimiter): boolean =>
  at >= text.length || text[at] === delimiter || text[at] === '\r' || text[at] === '\n';

function skipBlanks(text: string, from: number, delimiter: Delimiter): number {
  const blanks = delimiter === '\t' ? ' ' : ' \t';
  let at = from;
  while (at < text.length && blanks.includes(text[at] ?? '')) at++;
  return at;
}

const lineEndsIn = (text: string): number => text.split(/\r\n|\r|\n/).length - 1;
