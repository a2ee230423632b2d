// What would be said if a person asked at this moment: for "repeat", and for a panel that comes back to a sweep.
import type { Prompt } from './effect.ts';
import { doubt, hasLiveView, turnTheFocus } from './turn.ts';
import type { SweepState } from './state.ts';
import { between, seconds, type Moment } from '../units.ts';

export function currentPrompt(state: SweepState, now: Moment): Prompt {
  const { phase, plan } = state;
  switch (phase.name) {
    case 'dialling':
      return { say: 'next', noted: null, next: phase.next };
    case 'holding':
      return { say: 'too early', left: seconds(Math.max(0, plan.manner.holdTime - between(phase.since, now))) };
    case 'judging':
      return { say: 'did it hold', value: phase.next.value };
    case 'offered':
      return { say: 'offer', noted: null, outcome: phase.outcome, look: hasLiveView(plan), ...doubt(state) };
    case 'paused':
      return { say: 'paused' };
    case 'checking':
      return { say: 'check focus', noted: null, drift: phase.drift, ...(phase.rival && { rival: phase.rival }) };
    case 'turning':
      return turnTheFocus(plan, phase.way, null);
    case 'finished':
      return { say: 'outcome', outcome: phase.outcome, practice: plan.practice !== null, ...doubt(state) };
  }
}
