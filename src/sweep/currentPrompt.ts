// What would be said if a person asked at this moment: for "repeat", and for a panel that comes back to a sweep.
import type { Prompt } from './effect.ts';
import { hasLiveView, turnTheFocus } from './turn.ts';
import type { Trouble } from './trouble/trouble.ts';
import { isHopeless } from './trouble/troublesOf.ts';
import type { SweepState } from './state.ts';
import { between, seconds, type Moment } from '../units.ts';

/** The trouble for which the finish is offered, if it is one. */
function endedBy([first]: SweepState['troubles']): { trouble?: Trouble } {
  return first && isHopeless(first) ? { trouble: first } : {};
}

export function currentPrompt({ phase, plan, troubles }: SweepState, now: Moment): Prompt {
  switch (phase.name) {
    case 'dialling':
      return { say: 'next', noted: null, next: phase.next };
    case 'holding':
      return { say: 'too early', left: seconds(Math.max(0, plan.manner.holdTime - between(phase.since, now))) };
    case 'judging':
      return { say: 'did it hold', value: phase.next.value };
    case 'offered':
      return { say: 'offer', noted: null, outcome: phase.outcome, look: hasLiveView(plan), ...endedBy(troubles) };
    case 'paused':
      return { say: 'paused' };
    case 'checking':
      return { say: 'check focus', noted: null, drift: phase.drift };
    case 'turning':
      return turnTheFocus(plan, phase.way, null);
    case 'finished':
      return { say: 'outcome', outcome: phase.outcome };
  }
}
