// What comes after a verdict: on to the next value, an offer to finish, or a question about the focus. Everything that
// changes what is known ends here, so the three are judged in one place.
import { readiness, type Readiness } from './end/care.ts';
import { driftOf, STRONG, type Drift } from './end/drift.ts';
import { outcomeOf } from './end/outcome.ts';
import type { Effect, Prompt } from './effect.ts';
import type { Hold } from './hold.ts';
import { closingOf } from './next/closing.ts';
import { reasonToStart } from './next/reason.ts';
import { suggest, type Suggestion } from './next/suggestion.ts';
import type { Plan } from './plan.ts';
import type { Phase, SweepState } from './state.ts';
import { say, sound, wake } from './step.ts';
import { timeSpent } from './timeSpent.ts';
import { carriedOver } from './transfer/carried.ts';
import { isTransfer } from './transfer/joint.ts';
import { wayToTurn, type Way } from './transfer/turning.ts';
import { seconds, type Moment } from '../units.ts';

/** A state and what it asks for, before the event that led to it joins the journal. */
export interface Turn {
  readonly state: SweepState;
  readonly effects: readonly Effect[];
}

/** Everything of a state but where it stands in the loop. */
export type Known = Omit<SweepState, 'phase'>;

/** Judges the holds so far and enters the phase that follows; `noted` is the hold just judged, to be read back. */
export function turn(state: Known, at: Moment, noted: Hold | null): Turn {
  const { readiness: enough, ready, hidden, next } = look(state);
  const seen = driftOf(state.belief, state.holds, state.trustedUpTo);
  const drift = seen && seen.bayesFactor > STRONG ? seen : hidden;
  if (drift) return enter(state, { name: 'checking', drift, next }, [say({ say: 'check focus', noted, drift })]);
  const way = state.plan.transfer ? wayToTurn(state.plan.transfer, enough) : null;
  if (way) return enter(state, { name: 'turning', way, next }, [say(turnTheFocus(state.plan, way, noted))]);
  if (ready) {
    const outcome = currentOutcome(state, at);
    return enter(state, { name: 'offered', outcome, next }, [say({ say: 'offer', noted, outcome, look: hasLiveView(state.plan) })]);
  }
  return dial(state, next, say({ say: 'next', noted, next }));
}

/** Is there a focus in live view that must still be sharp? */
export const hasLiveView = ({ practice, transfer }: Plan): boolean => practice === null && transfer === undefined;

export const turnTheFocus = (plan: Plan, way: Way, noted: Hold | null): Prompt => ({
  say: 'turn the focus',
  noted,
  way,
  practice: plan.practice !== null,
});

/** Asks for a value to be dialled in; with a counted pace the hold begins by itself when the time to dial is over. */
export const dial = (state: Known, next: Suggestion, prompt: Effect): Turn =>
  enter(state, { name: 'dialling', next }, [prompt, ...countIn(state)]);

/** Is the care met, and which value would be held next? `hidden`: strong evidence of a shift that harms. */
export function look({ belief, holds, plan, dialled, skipped, trustedUpTo }: Known): Looked {
  const { care, order, holdTime } = plan.manner;
  const held = holds.map(({ value, reading }) => ({ value, counts: reading.counts }));
  const enough = readiness(belief, held, care);
  const { hidden, test } = closingOf({ belief, holds, readiness: enough, care, skipped, trustedUpTo });
  if (test) return { readiness: enough, ready: false, hidden, next: test };
  const next = suggest({ belief, holds, readiness: enough, care, order, dialled, holdTime, skipped });
  const reason = next.reason.because === 'start' ? reasonToStart(next.value, plan.scale.step, plan.memory) : next.reason;
  return { readiness: enough, ready: enough.ready, hidden, next: { ...next, reason } };
}

interface Looked {
  readonly readiness: Readiness;
  /** Enough, and no closing hold is wanted. */
  readonly ready: boolean;
  readonly hidden: Drift | null;
  readonly next: Suggestion;
}

/** What would come out if the sweep ended at this moment. */
export function currentOutcome({ plan, belief, holds, spent, journal }: Known, at: Moment) {
  const held = holds.map(({ value, reading }) => ({ value, counts: reading.counts }));
  const tally = { holds: holds.length + spent.length, seconds: timeSpent(journal.map((event) => event.at), at) };
  return isTransfer(plan) ? carriedOver(plan, belief, held, tally) : outcomeOf(belief, held, tally);
}

export const enter = (state: Known, phase: Phase, effects: readonly Effect[]): Turn => ({ state: { ...state, phase }, effects });

function countIn({ plan }: Known): Effect[] {
  const { pace } = plan.manner;
  if (pace.set === 'own') return [];
  const ticks = [3, 2, 1].filter((before) => before < pace.toDial);
  return [...ticks.map((before) => sound('count', seconds(pace.toDial - before))), wake('dial', pace.toDial)];
}
