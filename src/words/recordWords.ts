// One sweep of the logbook: when it was, its replay hold by hold, and how it was told afterwards.
import type { Arrows, Light } from '../sweep/verdict.ts';
import type { Subject } from '../sweep/plan.ts';
import type { Moment, Steps } from '../units.ts';

/** Of the centre, with 95 % of the belief. */
type Interval = { readonly from: number; readonly to: number };

export interface RecordWords {
  readonly title: string;
  readonly gone: string;
  readonly details: (subject: Subject, finished: Moment) => string;
  readonly bench: string;
  readonly conditions: {
    readonly open: (noted: boolean) => string;
    readonly form: string;
    readonly save: string;
    readonly saved: string;
  };
  readonly replay: {
    readonly open: string;
    readonly title: string;
    readonly at: (step: number, last: number) => string;
    readonly earlier: string;
    readonly later: string;
    readonly play: string;
    readonly halt: string;
    /** What was known of the centre at this stop. */
    readonly sure: (interval: Interval) => string;
    /** The drawing of all stops, for those who hear the screen. */
    readonly narrowing: (first: Interval, last: Interval) => string;
    readonly opened: string;
    readonly held: (hold: {
      readonly number: number;
      readonly value: Steps;
      readonly light: Light;
      readonly arrows: Arrows;
      readonly counts: 'in' | 'out';
    }) => string;
    readonly takenBack: (left: number) => string;
    readonly begunAfresh: string;
    readonly ended: string;
    readonly checking: string;
    readonly turning: string;
    readonly offered: string;
    /** `why`: the reason as the sweep gave it. */
    readonly next: (value: Steps, why: string) => string;
  };
}
