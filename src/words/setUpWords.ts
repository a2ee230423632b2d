// What the set-up walk says and shows, step by step.
import type { StepPicture } from '../optics/setUp/stepPicture.ts';
import type { StepOf } from '../optics/setUp/step.ts';
import type { StepId } from '../optics/setUp/stepIds.ts';
import type { ToSpeak } from '../optics/setUp/walk.ts';

/** A sentence of each step, from what that step depends on. */
export type Each = { readonly [Id in StepId]: (step: StepOf<Id>) => string };

export interface SetUpWords {
  readonly title: string;
  readonly progress: { readonly label: string; readonly at: (step: number, of: number) => string; readonly done: string };
  readonly noAperture: string;
  /** Short, to be spoken. */
  readonly speak: (what: NonNullable<ToSpeak>) => string;
  readonly show: (step: Exclude<NonNullable<ToSpeak>, 'done'>) => string;
  /** What is drawn beside a step. */
  readonly pictures: Readonly<Record<StepPicture, string>>;
  readonly step: {
    readonly label: string;
    readonly before: string;
    readonly liveView: { readonly ask: string; readonly sharp: string; readonly not: string };
    readonly keep: string;
    readonly kept: (reading: string) => string;
  };
  readonly done: { readonly label: string; readonly tooLate: string };
  readonly leadsTo: string;
  readonly means: string;
  readonly also: string;
}
