// What the large face of the sweep screen shows in each phase: a caption, the value, how much of the hold has run, and
// the one line below it. Everything counted is counted here.
import { writeSteps } from '../../sweep/scale.ts';
import { findingOf, type Finding } from '../../sweep/finding.ts';
import type { SweepState } from '../../sweep/state.ts';
import { nameOf, troubleInWords } from '../../voice/checks.ts';
import { between, type Moment, type Steps } from '../../units.ts';
import { sureInWords } from '../outcome/sure.ts';
import { ENTER, FACE_WORDS } from '../outcome/words.ts';
import { inTenths } from '../words/figures.ts';

export interface Face {
  readonly caption: string;
  /** The correction in hand; null where there is none. */
  readonly value: Steps | null;
  /** What the value is for. */
  readonly use: 'set' | 'enter';
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
      return { caption: 'Hold', value: phase.next.value, use: 'set', run: share, secondsLeft: left, line: 's left' };
    }
    case 'judging':
      return { ...still('Time is up', phase.next.value, 'Did it hold?'), run: 1 };
    case 'offered':
    case 'finished':
      return found(findingOf(phase.outcome, state.troubles));
    case 'paused':
      return still('Paused', phase.next.value, 'nothing is timed');
    case 'checking':
      return still('Check the focus', null, '');
    case 'turning':
      return still('Turn the focus', null, '');
  }
}

const still = (caption: string, value: Steps | null, line: string, use: Face['use'] = 'set'): Face => ({
  caption,
  value,
  use,
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

function found(finding: Finding): Face {
  switch (finding.is) {
    case 'sure':
      return still(ENTER, finding.enter, sureInWords(finding.outcome.within), 'enter');
    case 'doubtful':
      return still(nameOf(finding.trouble), null, troubleInWords(finding.trouble));
    case 'nothing':
      return still(FACE_WORDS.nothing, null, FACE_WORDS.nothingMeans);
    case 'bounded': {
      const { outcome } = finding;
      if (outcome.found === 'past the limit') return still(FACE_WORDS.past, null, FACE_WORDS.pastMeans);
      const line = outcome.found === 'carried over' ? FACE_WORDS.centreAbout({ centre: inTenths(outcome.centre) }) : FACE_WORDS.bandLies(outcome);
      return still(FACE_WORDS.beyond, null, line);
    }
  }
}
