// A round under way: ten short holds, told as in a sweep. Events in, next state out; times and seeds are arguments.
import type { Phase } from '../../sweep/state.ts';
import type { Light } from '../../sweep/verdict.ts';
import { between, type Moment } from '../../units.ts';
import type { LampCourse } from '../lamp.ts';
import { seededRandom } from '../random.ts';
import { climb, type Ladder } from './ladder.ts';
import { HOLDS_A_ROUND, namedRight, type TrainingHold, type TrainingRound } from './round.ts';
import { courseShown, draw, TRAINING_HOLD, type Shown } from './shown.ts';

/** The same names as in a sweep, for the same hands. `finished`: the round is over. */
type TrainingPhase =
  | { readonly name: Extract<Phase['name'], 'dialling' | 'finished'> }
  | { readonly name: Extract<Phase['name'], 'holding' | 'judging'>; readonly since: Moment; readonly shown: Shown; readonly course: LampCourse };

export interface Training {
  readonly seed: number;
  readonly ladder: Ladder;
  readonly holds: readonly TrainingHold[];
  readonly phase: TrainingPhase;
  /** Steady was told before the time had run. */
  readonly tooSoon: boolean;
}

export type TrainingEvent =
  | { readonly did: 'began'; readonly at: Moment }
  | { readonly did: 'ran'; readonly at: Moment }
  | { readonly did: 'judged'; readonly at: Moment; readonly light: Light };

export const newRound = (seed: number, level: number): Training => ({
  seed,
  ladder: { level, inARow: 0 },
  holds: [],
  phase: { name: 'dialling' },
  tooSoon: false,
});

/** The next state; whatever makes no sense now changes nothing. */
export function train(state: Training, event: TrainingEvent): Training {
  const { phase } = state;
  switch (event.did) {
    case 'began':
      return phase.name === 'dialling' ? begun(state, event.at) : state;
    case 'ran':
      return phase.name === 'holding' ? { ...state, phase: { ...phase, name: 'judging' }, tooSoon: false } : state;
    case 'judged':
      if (phase.name !== 'holding' && phase.name !== 'judging') return state;
      if (event.light === 'steady' && phase.name === 'holding' && between(phase.since, event.at) < TRAINING_HOLD) {
        return { ...state, tooSoon: true };
      }
      return judged(state, phase.shown, event.light);
  }
}

function begun(state: Training, since: Moment): Training {
  const random = seededRandom(state.seed * 1009 + state.holds.length);
  const shown = draw(state.ladder.level, random);
  return { ...state, phase: { name: 'holding', since, shown, course: courseShown(shown, random) }, tooSoon: false };
}

function judged(state: Training, shown: Shown, told: Light): Training {
  const hold: TrainingHold = { shown: shown.light, told, level: shown.level };
  const holds = [...state.holds, hold];
  const moves = (shown.light === 'late' || shown.light === 'flicker') && shown.level === state.ladder.level;
  return {
    ...state,
    // The switch tells after the end tone only that it failed: that is not wrong.
    ladder: moves ? climb(state.ladder, namedRight(hold) || told === 'untold') : state.ladder,
    holds,
    phase: { name: holds.length < HOLDS_A_ROUND ? 'dialling' : 'finished' },
    tooSoon: false,
  };
}

/** The round as it is kept, once it is over. */
export const roundOf = ({ phase, ladder, holds }: Training, at: Moment): TrainingRound | null =>
  phase.name === 'finished' ? { at, level: ladder.level, holds: [...holds] } : null;
