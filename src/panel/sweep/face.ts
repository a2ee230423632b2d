// What the large face of the sweep screen shows in each phase: a caption, the value, how much of the hold has run, and
// the one line below it. Everything counted is counted here.
import { findingOf, type Finding } from '../../sweep/finding.ts';
import type { SweepState } from '../../sweep/state.ts';
import { between, type Moment, type Steps } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { sureInWords } from '../outcome/sure.ts';

export interface Face {
  readonly caption: string;
  /** The correction in hand; null where there is none. */
  readonly value: Steps | null;
  /** What the value is for. */
  readonly use: 'set' | 'enter';
  /** Share of the hold time that has run, 0 to 1. */
  readonly run: number;
  /** Whole seconds still to hold, while a hold is under way; the line below says of what. */
  readonly secondsLeft: string | null;
  readonly line: string;
}

export function faceOf(state: SweepState, now: Moment): Face {
  const { phase, plan } = state;
  const { caption, ...say } = words('sweep').face;
  switch (phase.name) {
    case 'dialling':
      return still(caption.dialling, phase.next.value, wayTo(state, phase.next.value));
    case 'holding': {
      const run = between(phase.since, now);
      const { figure, unit } = say.left(Math.max(0, Math.ceil(plan.manner.holdTime - run)));
      return { caption: caption.holding, value: phase.next.value, use: 'set', run: Math.min(1, run / plan.manner.holdTime), secondsLeft: figure, line: unit };
    }
    case 'judging':
      return { ...still(caption.judging, phase.next.value, say.steady), run: 1 };
    case 'offered':
    case 'finished':
      return found(findingOf(phase.outcome, state.troubles));
    case 'paused':
      return still(caption.paused, phase.next.value, say.paused);
    case 'checking':
    case 'turning':
      return still(caption[phase.name], null, '');
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
  const say = words('sweep').face;
  const clicks = Math.abs(value - dialled) / plan.scale.step;
  if (holds.length + spent.length === 0) return plan.manner.pace.set === 'own' ? say.thenPress : say.thenWait;
  return clicks === 0 ? say.already : say.way(clicks, value > dialled ? 'up' : 'down', dialled);
}

function found(finding: Finding): Face {
  const { caption, ...say } = words('sweep').face;
  switch (finding.is) {
    case 'sure':
      return still(caption.enter, finding.enter, sureInWords(finding.outcome.within), 'enter');
    case 'doubtful':
      return still(words('trouble').name(finding.trouble), null, words('trouble').seen(finding.trouble));
    case 'nothing':
      return still(caption.nothing, null, say.toCheck);
    case 'bounded': {
      const { outcome } = finding;
      if (outcome.found === 'past the limit') return still(caption[outcome.found], null, say.past);
      return still(caption['beyond the scale'], null, outcome.found === 'carried over' ? say.centreAbout(outcome.centre) : say.lies[outcome.side]);
    }
  }
}
