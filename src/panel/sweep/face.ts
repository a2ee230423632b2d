// What the large face of the sweep screen shows in each phase: a caption, the value, how much of the hold has run, and
// the one line below it. Everything counted is counted here.
import { writeSteps } from '../../sweep/scale.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { SweepState } from '../../sweep/state.ts';
import { isHopeless } from '../../sweep/trouble/troublesOf.ts';
import { nameOf } from '../../voice/checks.ts';
import { TROUBLE_SAID } from '../../voice/troubles.ts';
import { between, type Moment, type Steps } from '../../units.ts';
import { inPercent } from '../words/quantities.ts';

export interface Face {
  readonly caption: string;
  /** The correction in hand; null where there is none to set. */
  readonly value: Steps | null;
  /** Share of the hold time that has run, 0 to 1. */
  readonly run: number;
  /** Whole seconds still to hold, while a hold is under way. */
  readonly secondsLeft: number | null;
  readonly line: string;
}

export function faceOf(state: SweepState, now: Moment): Face {
  const { phase, plan } = state;
  switch (phase.name) {
    case 'dialling':
      return still('Set', phase.next.value, wayTo(state, phase.next.value));
    case 'holding': {
      const run = between(phase.since, now);
      const left = Math.max(0, Math.ceil(plan.manner.holdTime - run));
      const share = Math.min(1, run / plan.manner.holdTime);
      return { caption: 'Hold', value: phase.next.value, run: share, secondsLeft: left, line: 's left' };
    }
    case 'judging':
      return { ...still('Time is up', phase.next.value, 'Did it hold?'), run: 1 };
    case 'offered':
      return troubled(state) ?? found(phase.outcome);
    case 'paused':
      return still('Paused', phase.next.value, 'nothing is timed');
    case 'finished':
      return troubled(state) ?? found(phase.outcome);
    case 'checking':
      return still('Check the focus', null, '');
    case 'turning':
      return still('Turn the focus', null, '');
  }
}

const still = (caption: string, value: Steps | null, line: string): Face => ({
  caption,
  value,
  run: 0,
  secondsLeft: null,
  line,
});

/** How many clicks of the dial lead from the value the body is set to, once that is known. */
function wayTo({ holds, spent, dialled, plan }: SweepState, value: Steps): string {
  const clicks = Math.abs(value - dialled) / plan.scale.step;
  if (holds.length + spent.length === 0) return plan.manner.pace.set === 'own' ? 'then half-press' : 'then wait for the count';
  if (clicks === 0) return 'as it is now';
  return `${clicks} ${value > dialled ? 'up' : 'down'} from ${writeSteps(dialled)}`;
}

/** A trouble for which more holds are of no use says so in place of what was found. */
function troubled({ troubles }: SweepState): Face | null {
  const [first] = troubles;
  return first && isHopeless(first) ? still(nameOf(first), null, TROUBLE_SAID[first.trouble]) : null;
}

function found(outcome: Outcome): Face {
  switch (outcome.found) {
    case 'band':
      return still('The centre', outcome.chosen, `${inPercent(outcome.within)} sure within one step`);
    case 'carried over':
      return outcome.service
        ? still('Beyond the scale', null, `The centre lies at about ${writeSteps(outcome.centre)}.`)
        : still('The centre', outcome.chosen, `${inPercent(outcome.within)} sure within one step`);
    case 'past the limit':
      return still('Past the limit', null, 'The band runs past the scale.');
    case 'beyond the scale':
      return still('Beyond the scale', null, `The band lies ${outcome.side} it.`);
    case 'nothing':
      return still('Nothing held', null, 'Finish to see what to check.');
  }
}
