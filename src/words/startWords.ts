// The start once the panel is drawn, and the screen of the next lens.
import type { Steps, Moment } from '../units.ts';

export interface StartWords {
  readonly found: {
    readonly label: string;
    /** In place of a value. */
    readonly none: string;
    readonly more: (count: number) => string;
  };
  readonly startWith: (lens: string) => string;
  readonly startNew: (lens: string) => string;
  /** Something that was told does not fit, and its field says why. */
  readonly unfit: string;
  readonly noName: string;
  readonly last: {
    readonly label: string;
    readonly picked: string;
    readonly notMeasured: string;
    readonly noValue: (at: Moment) => string;
    readonly value: (value: Steps, how: 'measured' | 'entered', at: Moment) => string;
  };
  readonly nextLens: string;
  readonly bench: string;
  readonly byHand: string;
  readonly photographs: string;
  readonly practice: { readonly open: string; readonly note: string };
  readonly unnamed: {
    readonly label: string;
    readonly waits: (lens: string, value: Steps | null) => string;
    readonly others: (count: number) => string;
  };
  readonly unfinished: {
    readonly here: string;
    readonly elsewhere: string;
    readonly about: (lens: string, details: string) => string;
    readonly sofar: (holds: number) => string;
    readonly goOn: string;
    readonly follow: string;
    readonly end: string;
  };
  readonly next: {
    readonly title: string;
    readonly field: string;
    readonly placeholder: string;
    readonly hint: string;
    readonly planned: string;
    readonly plan: string;
  };
}
