// What may be wrong with a table that comes in, as data: with the file, with a line, with a cell.
import type { NamedFault } from '../unfit.ts';
import type { Row } from './row.ts';

/** `cell`: what stands in it. */
export type CellFault =
  /** A comma that could part thousands or decimals, and how either would be written. */
  | { readonly is: 'two numbers'; readonly cell: string; readonly thousands: string; readonly decimal: string }
  | { readonly is: 'no number' | 'no date'; readonly cell: string }
  | { readonly is: 'none of these'; readonly cell: string; readonly options: readonly string[] }
  | { readonly is: 'empty' }
  | { readonly is: 'no such converter'; readonly converter: string }
  | { readonly is: 'no correction'; readonly value: number }
  | { readonly is: 'unfit'; readonly fault: NamedFault };

/** `line` is counted from 1 in the file; `column`: what it is about, null where that is the whole line. */
export interface LineFault {
  readonly line: number;
  readonly column: keyof Row | null;
  readonly fault: CellFault;
}

export type TableFault =
  /** A quote that never closes, or one where none may stand. */
  { readonly is: 'open quote' | 'stray quote'; readonly line: number } | { readonly is: 'empty' } | { readonly is: 'too many lines'; readonly most: number };
