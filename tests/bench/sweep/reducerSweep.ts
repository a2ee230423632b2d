// Whole sweeps through the reducer itself, as the panel runs them: events in, phases out. States that the same verdicts
// have led to before are kept, since a thousand sweeps begin alike.
import { NO_MEMORY, type Memory } from '../../../src/sweep/memory.ts';
import type { Care } from '../../../src/sweep/care.ts';
import type { Outcome } from '../../../src/sweep/end/outcome.ts';
import type { SweepEvent } from '../../../src/sweep/event.ts';
import { openSweep } from '../../../src/sweep/opening.ts';
import { USUAL_MANNER, USUAL_HOLD_TIME } from '../../../src/sweep/usualManner.ts';
import { USUAL_SCALE, type Scale } from '../../../src/sweep/scale.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import { transition } from '../../../src/sweep/transition.ts';
import { currentOutcome } from '../../../src/sweep/turn.ts';
import type { Trouble } from '../../../src/sweep/trouble/trouble.ts';
import type { ArrowDisplay, Verdict } from '../../../src/sweep/verdict.ts';
import { millimetres, moment, steps } from '../../../src/units.ts';
import type { Before } from './otherObservers.ts';

export interface Ended {
  readonly holds: number;
  readonly seconds: number;
  /** Offered to finish, asked to look at the focus, or given up. */
  readonly ended: 'offered' | 'checking' | 'gave up';
  readonly outcome: Outcome;
  readonly state: SweepState;
  /** Every trouble that was named on the way. */
  readonly named: readonly Trouble['trouble'][];
}

interface Terms {
  readonly care: Care;
  readonly arrows: ArrowDisplay;
  readonly memory?: Memory;
  /** Asked to look at the focus, the person stops there, or says that it has not moved and goes on. */
  readonly looks?: 'stop' | 'go on';
  readonly scale?: Scale;
  /** Is shown the state after every hold. */
  readonly watch?: (state: SweepState) => void;
}

/** Nobody would go on for longer than this. */
export const PATIENCE = 40;
const KEPT_DEPTH = 7;
const BETWEEN_HOLDS = 12;

/** One sweep: `press` says what the finder shows at a value after what went before; `own`: values the person sets first. */
type Sweep = (press: (value: number, before: Before) => Verdict, own?: readonly number[]) => Ended;

/** A way to run sweeps on these terms. */
export function sweeper({ care, arrows, memory = NO_MEMORY, looks = 'stop', scale = USUAL_SCALE, watch = () => undefined }: Terms): Sweep {
  const kept = new Map<string, SweepState>();
  const first = opened(care, arrows, memory, scale);
  return (press, own = []) => {
    let state = first;
    let key = '';
    let spent = 0;
    let dialled = 0;
    let way: Before['way'] = 0;
    const named: Trouble['trouble'][] = [];
    for (;;) {
      const { phase, holds } = state;
      const isOwn = holds.length < own.length && phase.name === 'offered';
      if ((phase.name !== 'dialling' && !isOwn) || holds.length >= PATIENCE) break;
      const value = own[holds.length] ?? phase.next.value;
      if (value !== dialled) way = value > dialled ? 1 : -1;
      const begins = spent + 4 + 0.3 * Math.abs(value - dialled);
      const verdict = press(value, { holds: state.holds.length, seconds: begins, way });
      key += `${value}${verdict.light}${verdict.arrows};`;
      const known = kept.get(key);
      state = known ?? held(state, value, verdict, begins);
      if (!known && state.holds.length <= KEPT_DEPTH) kept.set(key, state);
      const steady = state.holds.at(-1)?.reading.counts === 'in';
      spent = begins + (steady ? 5 : 2);
      dialled = value;
      named.push(...state.troubles.map(({ trouble }) => trouble));
      watch(state);
      if (looks === 'go on' && state.phase.name === 'checking') {
        state = transition(state, { did: 'checked', at: moment(spent * 1000), focus: 'unmoved', by: 'key' }).state;
        key += 'unmoved;';
      }
    }
    const { phase } = state;
    const ended = phase.name === 'offered' || phase.name === 'checking' ? phase.name : 'gave up';
    const outcome = phase.name === 'offered' ? phase.outcome : currentOutcome(state, moment(0));
    return { holds: state.holds.length, seconds: spent, ended, outcome, state, named };
  };
}

function opened(care: Care, arrows: ArrowDisplay, memory: Memory, scale: Scale): SweepState {
  const subject = {
    situation: 's',
    body: 'Velde M1',
    lens: 'Orrin 85 f/1.8',
    focalLength: millimetres(85),
    distance: millimetres(4250),
  };
  const manner = { ...USUAL_MANNER, care };
  const plan = { subject, scale, arrows, manner, memory, start: steps(0), practice: null };
  return openSweep({ did: 'opened', at: moment(0), id: 'bench', plan }).state;
}

/** One more hold, begun so many seconds after the opening. */
export function held(state: SweepState, value: number, verdict: Verdict, begins = (state.holds.length + 1) * BETWEEN_HOLDS): SweepState {
  const began = moment(begins * 1000);
  const ran = moment(began + USUAL_HOLD_TIME * 1000);
  const events: SweepEvent[] = [
    { did: 'began', at: began, value: steps(value), by: 'key' },
    { did: 'ran', at: ran },
    { did: 'judged', at: ran, verdict, by: 'key', heard: null },
  ];
  return events.reduce((before, event) => transition(before, event).state, state);
}
