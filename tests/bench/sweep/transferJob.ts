// Pairs whose centre lies at the end of the scale or past it: a sweep at critical focus, and where it ends past a limit or
// beyond the scale the width transfer, in a process of its own. The focus is set aside by an unknown amount, and turned
// again whenever the panel asks.
import { halfPress, type PracticeCamera } from '../../../src/practice/camera.ts';
import { normal, seededRandom, type Random } from '../../../src/practice/random.ts';
import type { Outcome } from '../../../src/sweep/end/outcome.ts';
import { openSweep } from '../../../src/sweep/opening.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import { transferPlan } from '../../../src/sweep/transfer/opened.ts';
import { transition } from '../../../src/sweep/transition.ts';
import { currentOutcome } from '../../../src/sweep/turn.ts';
import { moment } from '../../../src/units.ts';
import { offTheScale, light } from './observers.ts';
import { held, PATIENCE, sweeper } from './reducerSweep.ts';

/** How a pair came to its result: without a transfer, with one from the end that is seen, with one and no end seen. */
export type Road = 'on the scale' | 'carried from the visible end' | 'never lit';

export interface TransferRun {
  /** Null where no interval came out. */
  readonly road: Road | null;
  readonly covered: boolean;
  readonly length: number;
  /** The centre found less the true one. */
  readonly error: number;
  readonly holds: number;
  /** How often the focus was set aside. */
  readonly turns: number;
  /** Truth: does the pair need service, and was it advised? */
  readonly beyond: boolean;
  readonly advised: boolean;
}

const ASIDE_SD = 4;
const MOST_TURNS = 8;

const [arrowsTerm, softness, runs, from] = process.argv.slice(2);
const arrows = arrowsTerm === 'arrows' ? 'right-is-up' : 'absent';
const sweep = sweeper({ care: 'standard', arrows });
const all: TransferRun[] = [];
for (let run = Number(from); run < Number(from) + Number(runs); run++) {
  const draw = seededRandom(2 * run + 1);
  const camera: PracticeCamera = { ...offTheScale(draw), ...light(draw, Number(softness), Number(softness), 0.02), arrows };
  all.push(ofPair(camera, seededRandom(2 * run + 2)));
}
console.log(JSON.stringify(all));

function ofPair(camera: PracticeCamera, random: Random): TransferRun {
  const truth = (camera.low + camera.high) / 2;
  const first = sweep((value) => halfPress(camera, value, random));
  const state = goOn(first.state, camera, random, 0);
  const outcome = outcomeIn(state.sweep);
  const plan = transferPlan(state.sweep, outcome);
  const second = plan && goOn(openSweep({ did: 'opened', at: moment(0), id: 'second', plan }).state, camera, random, 0);
  const last = second ? outcomeIn(second.sweep) : outcome;
  const interval = 'interval' in last ? last.interval : null;
  return {
    road: interval === null ? null : !plan ? 'on the scale' : plan.transfer.visible === null ? 'never lit' : 'carried from the visible end',
    covered: interval !== null && interval.from <= truth && truth <= interval.to,
    length: interval ? interval.to - interval.from : 0,
    error: 'centre' in last ? last.centre - truth : 0,
    holds: outcome.tally.holds + (second ? last.tally.holds : 0),
    turns: second?.turns ?? 0,
    beyond: truth > 20,
    advised: last.found === 'beyond the scale' || (last.found === 'carried over' && last.service),
  };
}

/** Holds on until there is an offer; asked whether the focus is the same the person says yes, and turns it where asked. */
function goOn(start: SweepState, camera: PracticeCamera, random: Random, aside: number): { sweep: SweepState; turns: number } {
  let state = start;
  let turns = 0;
  const middle = (camera.low + camera.high) / 2;
  for (let step = 0; step < PATIENCE + MOST_TURNS && turns <= MOST_TURNS; step++) {
    const { phase } = state;
    if (phase.name === 'turning') {
      turns++;
      aside = normal(random, 0, ASIDE_SD) - middle;
      state = transition(state, { did: 'checked', at: moment(0), focus: 'moved', by: 'key' }).state;
    } else if (phase.name === 'checking') {
      state = transition(state, { did: 'checked', at: moment(0), focus: 'unmoved', by: 'key' }).state;
    } else if (phase.name === 'dialling') {
      state = held(state, phase.next.value, halfPress(camera, phase.next.value - aside, random));
    } else break;
  }
  return { sweep: state, turns };
}

function outcomeIn(state: SweepState): Outcome {
  return state.phase.name === 'offered' ? state.phase.outcome : currentOutcome(state, moment(0));
}
