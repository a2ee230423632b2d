// The milliseconds of every suggestion of twenty whole sweeps, in a process that holds nothing but the search, as the panel does. In the
// bench's own process the memory of the other families counts, too.
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

const SWEEPS = 20;

export interface Taken {
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

const arrows = process.argv[2] as Plan['arrows'];
const taken: Taken = { suggesting: [], judging: [], closing: [] };
for (let seed = 0; seed < SWEEPS; seed++) timeSweep(seed, arrows, taken);
console.log(JSON.stringify(taken));
