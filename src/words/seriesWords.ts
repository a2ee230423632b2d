// Pictures in a series: how to take them, which is which, and what follows from all of them together.
import type { BracketFault } from '../photographs/bracket.ts';
import type { BracketPart } from '../photographs/series/bracketParts.ts';
import type { BracketSeries, BracketTold } from '../photographs/series/bracketSeries.ts';
import type { CheckPart } from '../photographs/series/checkParts.ts';
import type { CheckSeries } from '../photographs/series/checkSeries.ts';
import type { OutOfSeries } from '../photographs/series/outOfSeries.ts';
import type { WithInterval } from '../photographs/withInterval.ts';
import type { Scale } from '../sweep/scale.ts';
import type { Steps } from '../units.ts';

export interface SeriesWords {
  readonly use: {
    readonly title: string;
    readonly options: Readonly<Record<'one' | 'check' | 'bracket', { readonly label: string; readonly note: string }>>;
  };
  /** The set-up for every picture, in order. */
  readonly setUp: { readonly title: string; readonly steps: readonly string[] };
  readonly result: string;
  /** Some are still being read. */
  readonly wait: string;
  readonly out: Readonly<Record<OutOfSeries, string>>;
  readonly shown: string;
  /** Of the correction that is checked, or that the bracket lies around. */
  readonly value: {
    readonly label: string;
    readonly hint: Readonly<Record<'one' | 'check' | 'bracket', string>>;
    readonly offTheScale: (scale: Scale) => string;
  };
  /** Crops of an upright and of a level edge in two pictures, side by side. */
  readonly beside: { readonly title: string; readonly reference: (upright: boolean) => string; readonly shot: (upright: boolean) => string };
  /** No picture of it was focused in live view. */
  readonly noReference: string;
  readonly figures: string;
  readonly check: {
    readonly order: { readonly title: string; readonly steps: readonly string[] };
    /** What one picture was. */
    readonly part: { readonly title: string; readonly options: Readonly<Record<CheckPart, string>> };
    readonly none: string;
    /**
     * The first is the headline. `value`: the correction that the body was set to; null where it was not told. `step`: what a bracket measured a
     * step to be worth; null where none did.
     */
    readonly told: (series: CheckSeries, value: Steps | null, scale: Scale, step: WithInterval | null) => readonly string[];
    readonly figures: (series: CheckSeries) => readonly string[];
  };
  readonly bracket: {
    readonly order: {
      readonly title: string;
      readonly reference: string;
      readonly shots: string;
      /** The list of values, in order. */
      readonly list: string;
    };
    readonly part: { readonly title: string; readonly option: (part: BracketPart) => string };
    readonly none: string;
    readonly fault: Readonly<Record<BracketFault['is'], string>>;
    /** The first is the headline. */
    readonly told: (told: BracketTold, scale: Scale) => readonly string[];
    /** Pictures that lie far from the line, by their names. */
    readonly apart: (names: readonly string[]) => string;
    readonly figures: (series: BracketSeries, told: BracketTold) => readonly string[];
    readonly chart: {
      readonly title: string;
      /** For those who do not see it. */
      readonly said: (told: BracketTold) => string;
      readonly behind: string;
      readonly inFront: string;
    };
  };
}
