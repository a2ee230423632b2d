// How long the panel thinks: one reading weighed and one suggestion made, at 41 values, over a whole sweep.
import { halfPress } from '../../src/practice/camera.ts';
import { cameraOf } from '../../src/practice/cameras.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { stillnessOf } from '../../src/sweep/end/stillness.ts';
import { NO_MEMORY } from '../../src/sweep/memory.ts';
import type { Opened, SweepEvent } from '../../src/sweep/event.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import { USUAL_MANNER, USUAL_HOLD_TIME } from '../../src/sweep/usualManner.ts';
import type { Plan } from '../../src/sweep/plan.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { look } from '../../src/sweep/turn.ts';
import { transition } from '../../src/sweep/transition.ts';
import { millimetres, moment, steps, type Moment } from '../../src/units.ts';
import { most, shown, type Family } from './figure.ts';

const SWEEPS = 20;
/** One frame of a screen that draws sixty a second, and what a suggestion may take of it. */
const FRAME = 16;
const SUGGESTION = 10;

export const suggestion: Family = {
  name: 'suggestion',
  async run() {
    const times = (['absent', 'right-is-up'] as const).flatMap((arrows) => {
      const taken: Taken = { suggesting: [], judging: [], closing: [] };
      for (let seed = 0; seed < SWEEPS; seed++) timeSweep(seed, arrows, taken);
      const light = arrows === 'absent' ? 'no arrows' : 'arrows';
      return [
        { name: `one suggestion, ${light}`, times: taken.suggesting, bound: SUGGESTION },
        { name: `the closing check, ${light}`, times: taken.closing, bound: FRAME },
        { name: `from a verdict to the next phase, ${light}`, times: taken.judging, bound: null },
      ];
    });
    return times.flatMap(({ name, times: all, bound }) => {
      const sorted = all.toSorted((a, b) => a - b);
      const at = (share: number): number => sorted[Math.floor(sorted.length * share)] ?? 0;
      const tail = `${name}: 95th percentile, ms`;
      return [shown(`${name}: median, ms`, at(0.5)), bound === null ? shown(tail, at(0.95)) : most(tail, at(0.95), bound)];
    });
  },
};

interface Taken {
  readonly suggesting: number[];
  readonly judging: number[];
  readonly closing: number[];
}

/** Milliseconds this process has worked: other work of the machine is not counted. */
function worked(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function timeSweep(seed: number, arrows: Plan['arrows'], { suggesting, judging, closing }: Taken): void {
  const plan: Plan = {
    subject: { situation: 's', body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: millimetres(85), distance: millimetres(4250) },
    scale: USUAL_SCALE,
    arrows,
    manner: USUAL_MANNER,
    memory: NO_MEMORY,
    start: steps(0),
    practice: { seed },
  };
  const camera = cameraOf({ seed }, USUAL_SCALE, arrows);
  const random = seededRandom(seed);
  const opened: Opened = { did: 'opened', at: moment(0), id: 'bench', plan };
  let { state } = openSweep(opened);
  let at = 0;
  while (state.phase.name === 'dialling' && state.holds.length < 30) {
    const { value } = state.phase.next;
    const verdict = halfPress(camera, value, random);
    const later = (seconds: number): Moment => moment((at += seconds * 1000));
    const events: SweepEvent[] = [
      { did: 'began', at: later(4), value, by: 'key' },
      { did: 'ran', at: later(USUAL_HOLD_TIME) },
    ];
    for (const event of events) state = transition(state, event).state;
    const before = worked();
    state = transition(state, { did: 'judged', at: later(1), verdict, by: 'key', heard: null }).state;
    judging.push(worked() - before);
    const again = worked();
    look(state);
    suggesting.push(worked() - again);
    const closed = worked();
    stillnessOf(state.asOneBand, state.holds, 0, value);
    closing.push(worked() - closed);
  }
}
