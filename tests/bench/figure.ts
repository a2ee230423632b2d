// What the bench reports: every figure with its name, the bound it is held to, and whether it holds.

import type { Program } from '../programs/programs.ts';

/** A bound of `null` is a figure reported for the reader only. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly bound: { readonly most: number } | { readonly least: number } | null;
}

/** One family of figures; `npm run bench -- --only NAME` runs it alone. */
export interface Family {
  readonly name: string;
  /** What it drives, beside Node. */
  readonly needs?: readonly Program[];
  readonly run: (options: BenchOptions) => Promise<Figure[]>;
}

interface BenchOptions {
  /** Folder with measured data that is not part of the project, where a family can use it. */
  readonly data: string | null;
  /** How often the browser is to be killed in all, and the file that keeps the count. */
  readonly kills?: number | undefined;
  readonly record?: string | undefined;
  /** Tells the person at the terminal how far it is. */
  readonly tell: (sentence: string) => void;
}

export const most = (name: string, value: number, bound: number): Figure => ({ name, value, bound: { most: bound } });
export const least = (name: string, value: number, bound: number): Figure => ({ name, value, bound: { least: bound } });
export const shown = (name: string, value: number): Figure => ({ name, value, bound: null });

export function isMet({ value, bound }: Figure): boolean {
  if (bound === null) return true;
  return 'most' in bound ? value <= bound.most : value >= bound.least;
}
