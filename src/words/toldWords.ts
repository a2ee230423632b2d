// Whose sweep it is: the line of chips, the fields behind them, and whose result a finished sweep is.
import type { ArrowDisplay } from '../sweep/verdict.ts';
import type { Subject, Unnamed } from '../sweep/plan.ts';
import type { Scale } from '../sweep/scale.ts';
import type { Millimetres } from '../units.ts';

/** What can be told of a sweep, each behind a chip of its own. */
export type Part = 'body' | 'lens' | 'length' | 'distance' | 'scale' | 'more';

/** A piece of the kit, chosen or named. */
export interface PieceWords {
  readonly choose: string;
  readonly another: string;
  readonly name: string;
  readonly hint: string;
}

/** Whose correction it is: the lens, and the rest of it. */
export interface SubjectWords {
  readonly lens: string;
  readonly details: string;
}

export interface ToldWords {
  readonly line: string;
  readonly parts: Readonly<Record<Part, string>>;
  /** A part that was not told yet, for those who hear the screen. */
  readonly open: (part: Part) => string;
  readonly is: (part: Part, value: string) => string;
  /** What a chip shows. */
  readonly chip: {
    readonly lens: (lens: string, converter: string | null) => string;
    readonly length: (length: Millimetres) => string;
    readonly distance: (distance: Millimetres) => string;
    readonly scale: (scale: Scale) => string;
    /** All that is known, where one chip stands for all. */
    readonly all: (known: readonly string[]) => string;
  };
  readonly done: string;
  readonly fewer: string;
  readonly body: PieceWords;
  readonly lens: PieceWords;
  readonly length: { readonly field: string; readonly hint: string; readonly converted: string; readonly ends: string };
  readonly distance: { readonly field: string; readonly hint: string };
  readonly scale: { readonly legend: string; readonly from: string; readonly to: string; readonly step: string };
  readonly arrows: { readonly label: string; readonly is: Readonly<Record<ArrowDisplay, string>> };
  readonly converter: { readonly label: string; readonly none: string };
  readonly subject: (subject: Subject) => SubjectWords;
  readonly unnamed: (subject: Unnamed) => SubjectWords;
  readonly whose: {
    readonly title: string;
    readonly body: string;
    readonly lens: string;
    readonly length: string;
    readonly hint: string;
    readonly ends: string;
    readonly keep: string;
    readonly later: string;
    readonly missing: Readonly<Record<'body' | 'lens' | 'length', string>>;
  };
}
