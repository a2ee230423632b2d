// What the person may do beside the holds themselves: set another value, skip one, pause, answer the question about the
// focus, go on or finish.
import { openingBelief } from './opening.ts';
import { holdAgain, notNowFor } from './holding.ts';
import type { SweepEvent } from './event.ts';
import { isOnScale } from './scale.ts';
import type { Phase, SweepState } from './state.ts';
import { ignored, refused, say, taken, type Move } from './step.ts';
import { focusMoved } from './trouble/troublesOf.ts';
import { currentOutcome, dial, doubt, enter, look, turn } from './turn.ts';

type Did<Name extends SweepEvent['did']> = Extract<SweepEvent, { did: Name }>;

/** The person sets a value of their own. */
export function chose(state: SweepState, event: Did<'chose'>): Move {
  const { phase, plan } = state;
  if (phase.name !== 'dialling' && phase.name !== 'offered') return refused(state, notNowFor(phase));
  if (!isOnScale(plan.scale, event.value)) return refused(state, 'off the scale');
  const next = { value: event.value, reason: { because: 'yours' } } as const;
  const after = dial(state, next, say({ say: 'next', noted: null, next }));
  return taken(after.state, event, after.effects);
}

/** Not this value now: the search names another, and may come back to it after the next verdict. */
export function skipped(state: SweepState, event: Did<'skipped'>): Move {
  const { phase } = state;
  if (phase.name !== 'dialling' && phase.name !== 'offered') return refused(state, notNowFor(phase));
  const known = { ...state, skipped: [...state.skipped, phase.next.value] };
  const { next } = look(known);
  const after = dial(known, next, say({ say: 'next', noted: null, next }));
  return taken(after.state, event, after.effects);
}

/** A pause drops the hold under way; nothing is timed while it lasts. */
export function paused(state: SweepState, event: Did<'paused'>): Move {
  const { phase } = state;
  if (phase.name === 'paused' || phase.name === 'finished' || phase.name === 'checking' || phase.name === 'turning') {
    return refused(state, notNowFor(phase));
  }
  const after = enter(state, { name: 'paused', next: phase.next }, [say({ say: 'paused' })]);
  return taken(after.state, event, after.effects);
}

export function resumed(state: SweepState, event: Did<'resumed'>): Move {
  const { phase } = state;
  if (phase.name !== 'paused') return refused(state, 'not paused');
  const after = dial(state, phase.next, say({ say: 'next', noted: null, next: phase.next }));
  return taken(after.state, event, after.effects);
}

/** The panel closed or the computer slept in the middle of a hold: it does not count. */
export function cutOff(state: SweepState, event: Did<'cut off'>): Move {
  const { phase } = state;
  return phase.name === 'holding' || phase.name === 'judging' ? holdAgain(state, event, phase, 'cut off') : ignored(state);
}

/** The focus was looked at: unmoved, and the holds stand; moved, and a fresh series begins. That it moved may also be seen
 *  before the finish that was offered. */
export function focusChecked(state: SweepState, event: Did<'checked'>): Move {
  const { phase, holds } = state;
  const { focus } = event;
  if (phase.name === 'turning') return turned(state, event, phase);
  if (phase.name !== 'checking' && (phase.name !== 'offered' || focus === 'unmoved')) return refused(state, 'nothing to check');
  if (focus === 'unmoved') {
    const after = turn({ ...state, trustedUpTo: holds.length }, event.at, null);
    return taken(after.state, event, after.effects);
  }
  return beganAfresh(state, event);
}

/** The ring was turned: the holds before it were of another centre. */
function turned(state: SweepState, event: Did<'checked'>, { next }: Extract<Phase, { name: 'turning' }>): Move {
  if (event.focus === 'unmoved') return refused(state, 'turn first');
  if (state.holds.length > 0) return beganAfresh(state, event);
  const after = dial(state, next, say({ say: 'opening', next }));
  return taken(after.state, event, after.effects);
}

function beganAfresh(state: SweepState, event: SweepEvent): Move {
  const { phase, plan, holds, spent } = state;
  const troubles = phase.name === 'checking' ? [focusMoved(phase.drift, true)] : [];
  // The band lies elsewhere now: no end of it is as before.
  const belief = { ...openingBelief(plan), remembered: null };
  const fresh = { belief, asOneBand: belief, stories: [], holds: [], skipped: [], trustedUpTo: 0, troubles };
  const known = { ...state, ...fresh, spent: [...spent, ...holds] };
  const { next } = look(known);
  const after = dial(known, next, say({ say: 'fresh series', next }));
  return taken(after.state, event, after.effects);
}

/** The finish was offered, and the person would rather hold on. */
export function wentOn(state: SweepState, event: Did<'went on'>): Move {
  const { phase } = state;
  if (phase.name !== 'offered') return refused(state, 'not offered');
  const after = dial(state, phase.next, say({ say: 'next', noted: null, next: phase.next }));
  return taken(after.state, event, after.effects);
}

/** The end, offered or not; a hold under way is dropped. */
export function finished(state: SweepState, event: Did<'finished'>): Move {
  if (state.phase.name === 'finished') return refused(state, 'finished');
  const outcome = currentOutcome(state, event.at);
  const after = enter(state, { name: 'finished', outcome, at: event.at }, [
    { do: 'record', outcome },
    say({ say: 'outcome', outcome, practice: state.plan.practice !== null, ...doubt(state) }),
  ]);
  return taken(after.state, event, after.effects);
}
