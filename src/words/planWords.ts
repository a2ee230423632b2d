// The plan of a job: what it is made from, what is to be done before each situation, and how far it is.
import type { Change } from '../logbook/plan/changes.ts';
import type { SweepTime } from '../logbook/plan/pace.ts';
import type { ZoomEnds, WantedFault } from '../logbook/plan/wanted.ts';
import type { Subject } from '../sweep/plan.ts';
import type { Seconds, Steps } from '../units.ts';

export interface PlanWords {
  readonly title: string;
  readonly replaces: string;
  readonly form: {
    readonly bodies: string;
    readonly lenses: string;
    readonly converters: string;
    readonly zooms: string;
    readonly ends: Readonly<Record<ZoomEnds, string>>;
    readonly distances: { readonly label: string; readonly hint: string; readonly fault: string };
    readonly make: string;
    readonly fault: (fault: WantedFault) => string;
    readonly unfit: string;
  };
  readonly measured: string;
  readonly next: string;
  readonly underWay: string;
  readonly anew: string;
  readonly pace: (pace: SweepTime) => string;
  /** To be read and to be heard. `next`: null when all is measured. */
  readonly progress: (progress: { readonly done: number; readonly all: number; readonly left: Seconds; readonly next: Subject | null }) => readonly string[];
  readonly stations: string;
  readonly details: (subject: Subject) => string;
  readonly is: Readonly<Record<'next' | 'to do', string>>;
  readonly done: (value: Steps | null) => string;
  readonly before: (change: Change) => string;
  readonly toEnter: string;
  readonly toEnterFor: (subject: Subject) => string;
}
