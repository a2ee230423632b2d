// The set-up walk: the steps for one case, and where the person is in them. "next" ticks and goes on, "back" goes
// back, "repeat" says the step again; a reading may be entered at any step. What was ticked and read becomes the
// sweep's bench.
import { CAMERA_STEPS } from './cameraSteps.ts';
import { EMPTY_BENCH, withReadings, type BenchReading, type BenchRecord } from './reading.ts';
import { RIG_STEPS } from './rigSteps.ts';
import type { SetUpCase, SetUpStep, StepRule, StepSaid } from './step.ts';

const PRACTICE_STEPS: readonly StepRule[] = [{ said: () => ({ id: 'practice' }) }];

/** The steps for this case, in order. Cautions that may hurt stand in the short version too. */
export function setUpWalk(given: SetUpCase): SetUpStep[] {
  const rules = given.practice ? PRACTICE_STEPS : [...RIG_STEPS, ...CAMERA_STEPS];
  return rules
    .filter((rule) => rule.when?.(given) ?? true)
    .filter((rule) => given.version === 'long' || !rule.longOnly)
    .map((rule) => ({
      said: rule.said(given),
      cautions: rule.cautions?.(given) ?? [],
      reads: rule.reads?.(given) ?? null,
    }));
}

/** Where the person is. `at` counts from 0; at the number of steps the walk is done. */
export interface WalkState {
  readonly steps: readonly SetUpStep[];
  readonly at: number;
  readonly bench: BenchRecord;
}

export type WalkEvent =
  { readonly walked: 'next' } | { readonly walked: 'back' } | { readonly walked: 'repeat' } | { readonly walked: 'read'; readonly reading: BenchReading };

/** `bench`: what was set up and read already. */
export const beginWalk = (given: SetUpCase, bench: BenchRecord = EMPTY_BENCH): WalkState => ({ steps: setUpWalk(given), at: 0, bench });

export const isDone = ({ steps, at }: WalkState): boolean => at >= steps.length;

/** The step to show, or null when the walk is done. */
export const currentStep = ({ steps, at }: WalkState): SetUpStep | null => steps[at] ?? null;

/** What is to be spoken: a step, the end of the walk, or nothing. */
export type ToSpeak = StepSaid | 'done' | null;

/** The next state, and what to say; nothing is said of a reading, the panel reads it back itself. */
export function walk(state: WalkState, event: WalkEvent): { readonly state: WalkState; readonly say: ToSpeak } {
  switch (event.walked) {
    case 'next': {
      const id = currentStep(state)?.said.id;
      if (id === undefined) return spokenAt(state);
      const ticked = state.bench.ticked.includes(id) ? state.bench.ticked : [...state.bench.ticked, id];
      return spokenAt({ ...state, at: state.at + 1, bench: { ...state.bench, ticked } });
    }
    case 'back':
      return spokenAt({ ...state, at: Math.max(0, state.at - 1) });
    case 'repeat':
      return spokenAt(state);
    case 'read':
      return { state: { ...state, bench: withReadings(state.bench, [event.reading]) }, say: null };
  }
}

const spokenAt = (state: WalkState): { state: WalkState; say: ToSpeak } => ({ state, say: currentStep(state)?.said ?? 'done' });
