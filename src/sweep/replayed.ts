// A kept journal as the person lived it: the state after each hold, each taking back, each fresh series, and the end. For
// looking at the strip as it was.
import type { Journal } from './event.ts';
import type { SweepState } from './state.ts';
import { replay, transition } from './transition.ts';

export interface ReplayedStage {
  readonly is: 'opened' | 'held' | 'taken back' | 'begun afresh' | 'finished';
  readonly state: SweepState;
}

/** In order; the first is before any hold. */
export function stagesOf([opened, ...rest]: Journal): ReplayedStage[] {
  if (!opened) return [];
  const stages: ReplayedStage[] = [{ is: 'opened', state: replay([opened]) }];
  let state = stages[0]?.state ?? replay([opened]);
  for (const event of rest) {
    const before = state;
    ({ state } = transition(before, event));
    const is = became(before, state);
    if (event.did === 'amended' && is === 'held') stages.pop();
    if (is !== null) stages.push({ is, state });
  }
  return stages;
}

function became(before: SweepState, after: SweepState): ReplayedStage['is'] | null {
  if (after.phase.name === 'finished') return before.phase.name === 'finished' ? null : 'finished';
  if (after.spent.length > before.spent.length) return 'begun afresh';
  if (after.spent.length + after.holds.length < before.spent.length + before.holds.length || before.phase.name === 'finished') return 'taken back';
  return after.holds === before.holds ? null : 'held';
}
