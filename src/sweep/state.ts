// What a sweep is at one moment: where in the loop it stands, the holds behind it, and what they say. Never stored;
// always worked out from the journal.
import type { Moment, Steps } from '../units.ts';
import type { Belief } from './belief/belief.ts';
import type { Drift } from './end/drift.ts';
import type { Outcome } from './end/outcome.ts';
import type { Rival, Weighed } from './end/story.ts';
import type { SweepEvent } from './event.ts';
import type { Hold } from './hold.ts';
import type { Suggestion } from './next/suggestion.ts';
import type { Plan } from './plan.ts';
import type { TurnWay } from './transfer/turning.ts';
import type { Trouble } from './trouble/trouble.ts';

/** The loop: dialling, holding, judging, and round again. */
export type Phase =
  /** The person dials `next` in; a press or a word begins the hold. */
  | { readonly name: 'dialling'; readonly next: Suggestion }
  /** The half-press is on. */
  | { readonly name: 'holding'; readonly next: Suggestion; readonly since: Moment }
  /** The full time has run, nothing failed so far: did it hold? `asked` counts the times nobody answered. */
  | { readonly name: 'judging'; readonly next: Suggestion; readonly since: Moment; readonly asked: number }
  /** The care is met: accept, or go on with `next`. */
  | { readonly name: 'offered'; readonly outcome: Outcome; readonly next: Suggestion }
  | { readonly name: 'paused'; readonly next: Suggestion }
  /** The holds contradict each other: look at the focus in live view. */
  /** `rival`: a story that explains the holds about as well as a focus that moved. */
  | { readonly name: 'checking'; readonly drift: Drift; readonly rival?: Rival; readonly next: Suggestion }
  /** The focus is to be set aside so that the whole band falls inside the scale. */
  | { readonly name: 'turning'; readonly way: TurnWay; readonly next: Suggestion }
  | { readonly name: 'finished'; readonly outcome: Outcome; readonly at: Moment };

export interface SweepState {
  readonly id: string;
  readonly plan: Plan;
  readonly phase: Phase;
  /** Every hold of the current series; a fresh series begins when the focus has moved. */
  readonly holds: readonly Hold[];
  /** Holds of earlier series, which no longer count. */
  readonly spent: readonly Hold[];
  /** What the holds say, by the story that is believed of them. */
  readonly belief: Belief;
  /** What they say where one band made all of them: what each new reading is weighed on. */
  readonly asOneBand: Belief;
  /** Other stories of the holds that are not unlikely, the likeliest first. */
  readonly stories: readonly Weighed[];
  /** The value the body is set to, as far as is known. */
  readonly dialled: Steps;
  /** Values the person passed over since the last verdict. */
  readonly skipped: readonly Steps[];
  /** Holds after which the person said that the focus had not moved: contradictions before it are settled. */
  readonly trustedUpTo: number;
  /** What seems wrong beside the correction, the likeliest first. */
  readonly troubles: readonly Trouble[];
  /** Everything since the opening that still stands: what undo takes back from. */
  readonly journal: readonly SweepEvent[];
}
