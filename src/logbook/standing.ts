// Where a situation stands: what was last measured, what is in the camera, and whether the two agree.
import type { Subject } from '../sweep/plan.ts';
import type { Moment, Steps } from '../units.ts';
import type { Entry } from './entry.ts';
import type { History } from './history.ts';
import type { Measured } from './measured.ts';

type State = 'never measured' | 'measured' | 'entered' | 'differ';

export interface Standing {
  readonly subject: Subject;
  readonly measured: Measured | null;
  readonly entered: Entry | null;
  readonly state: State;
  /** The value to go by: the one entered, else the one measured; null where there is neither. */
  readonly value: Steps | null;
  /** When that value was entered or measured. */
  readonly at: Moment | null;
}

/** Reads the standing off a history. A measurement that named no value leaves the one before it standing. */
export function standingOf({ subject, measured, entries }: History): Standing {
  const last = measured.findLast(({ chosen }) => chosen !== null) ?? measured.at(-1) ?? null;
  const entered = entries.at(-1) ?? null;
  const state = stateOf(last, entered);
  const value = entered?.value ?? last?.chosen ?? null;
  return { subject, measured: last, entered, state, value, at: entered?.at ?? last?.at ?? null };
}

function stateOf(measured: Measured | null, entered: Entry | null): State {
  if (!entered) return measured ? 'measured' : 'never measured';
  if (!measured || measured.chosen === null) return 'entered';
  return entered.value === measured.chosen || entered.value === measured.other ? 'entered' : 'differ';
}
