// A sweep whose plan was told more of after it began: the same journal on another plan, wherever what was held still fits it.
import type { Journal, Opened, SweepEvent } from './event.ts';
import type { Plan } from './plan.ts';
import type { SweepState } from './state.ts';
import { replay } from './transition.ts';

export interface Replanned {
  readonly journal: Journal;
  readonly state: SweepState;
}

/** `journal` as it happened, and the state it adds up to now; null where a hold of it would be lost or read in another way. */
export function replanned(journal: readonly SweepEvent[], state: SweepState, plan: Plan): Replanned | null {
  const again = withPlan(journal, plan);
  if (hasSameSearch(state.plan, plan)) return { journal: again, state: { ...state, plan, journal: withPlan(state.journal, plan) } };
  if (plan.arrows === 'absent' && heldOf(state).some(({ verdict }) => verdict.arrows !== 'none')) return null;
  const after = replay(again);
  return keepsHolds(state, after) ? { journal: again, state: after } : null;
}

/** Whose it is and how the rig was set up moves no value. */
const hasSameSearch = (one: Plan, other: Plan): boolean => JSON.stringify(searchOf(one)) === JSON.stringify(searchOf(other));
const searchOf = ({ scale, arrows, memory, start, manner, lapse }: Plan) => ({ scale, arrows, memory, start, manner, lapse });

function keepsHolds(before: SweepState, after: SweepState): boolean {
  const told = (state: SweepState) => JSON.stringify(heldOf(state).map(({ value, verdict }) => [value, verdict]));
  return told(before) === told(after) && before.spent.length === after.spent.length && isHeld(before) === isHeld(after);
}

const heldOf = ({ spent, holds }: SweepState) => [...spent, ...holds];
const isHeld = ({ phase }: SweepState): boolean => phase.name === 'holding' || phase.name === 'judging';

function withPlan(journal: readonly SweepEvent[], plan: Plan): Journal {
  const [opened, ...rest] = journal;
  return [{ ...(opened as Opened), plan }, ...rest];
}
