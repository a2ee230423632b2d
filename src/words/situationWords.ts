// One situation of the logbook: its value, what was measured and entered over time, several sweeps together, and a value put
// in by hand.
import type { Entry } from '../logbook/entry.ts';
import type { Combined } from '../logbook/combined.ts';
import type { Measured } from '../logbook/measured.ts';
import type { Comparison } from '../sweep/trouble/sweepsDiffer.ts';
import type { ShownWords } from './shownWords.ts';

export interface SituationWords {
  readonly gone: string;
  readonly lastValue: string;
  readonly value: string;
  readonly dueAgain: string;
  readonly toEnter: string;
  readonly photographs: string;
  readonly recheck: string;
  readonly anew: string;
  readonly measure: string;
  readonly retire: string;
  readonly bringBack: string;
  readonly history: {
    readonly title: string;
    readonly none: string;
    readonly chart: string;
    /** Beside its value: how it came here, and when. */
    readonly entered: (entry: Entry) => string;
    readonly measured: (one: Measured) => string;
    /** Where a measurement found no value to enter. */
    readonly noValue: Readonly<Record<Measured['found'], string>>;
    readonly facts: (one: Measured) => string;
    readonly seeHolds: string;
    readonly photographed: ShownWords & {
      readonly more: string;
      /** Over the crops; `both`: one of them was focused in live view. */
      readonly crops: (both: boolean) => string;
      readonly noCrops: string;
      readonly crop: Readonly<Record<'reference' | 'shot', string>>;
      readonly eraseCrops: string;
      readonly erase: string;
    };
  };
  readonly repeated: {
    readonly title: (count: number) => string;
    readonly centre: (all: Combined['random']) => string;
    readonly last: (compared: Comparison) => readonly string[];
    readonly figures: string;
    readonly scatter: (all: Combined) => readonly string[];
  };
  readonly byHand: {
    readonly open: string;
    readonly form: string;
    readonly known: string;
    readonly is: Readonly<Record<'band' | 'value', string>>;
    readonly one: string;
    readonly other: string;
    readonly centre: (centre: number) => string;
    readonly which: string;
    readonly value: string;
    readonly save: string;
    readonly saved: string;
    readonly choice: (value: number) => string;
  };
}
