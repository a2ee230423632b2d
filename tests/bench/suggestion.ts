// How long the panel thinks: one reading weighed and one suggestion made, at 41 values, over a whole sweep.
import { halfPress } from '../../src/practice/camera.ts';
import { cameraOf } from '../../src/practice/cameras.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { NO_MEMORY } from '../../src/sweep/memory.ts';
import type { Opened, SweepEvent } from '../../src/sweep/event.ts';
import { open } from '../../src/sweep/opening.ts';
import { USUAL_MANNER, USUAL_HOLD_TIME } from '../../src/sweep/manner.ts';
import type { Plan } from '../../src/sweep/plan.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { look } from '../../src/sweep/turn.ts';
import { transition } from '../../src/sweep/transition.ts';
import { millimetres, moment, steps, type Moment } from '../../src/units.ts';
import { most, shown, type Family } from './figure.ts';

const SWEEPS = 20;
/** One frame of a screen that draws sixty a second, and what is aimed at. */
const FRAME = 16;

export const suggestion: Family = {
  name: 'suggestion',
  async run() {
    const times = (['absent', 'right-is-up'] as const).flatMap((arrows) => {
      const suggesting: number[] = [];
      const judging: number[] = [];
      for (let seed = 0; seed < SWEEPS; seed++) timeSweep(seed, arrows, suggesting, judging);
      return [
        { name: `one suggestion, ${arrows === 'absent' ? 'no arrows' : 'arrows'}`, times: suggesting },
        { name: `from a verdict to the next phase, ${arrows === 'absent' ? 'no arrows' : 'arrows'}`, times: judging },
      ];
    });
    return times.flatMap(({ name, times: all }) => {
      const sorted = all.sort((a, b) => a - b);
      const middle = sorted[Math.floor(sorted.length / 2)] ?? 0;
      const bound = name.startsWith('one suggestion') ? most(`${name}: median, ms`, middle, FRAME) : shown(`${name}: median, ms`, middle);
      return [bound, shown(`${name}: slowest in ${sorted.length}, ms`, sorted.at(-1) ?? 0)];
    });
  },
};

function timeSweep(seed: number, arrows: Plan['arrows'], suggesting: number[], judging: number[]): void {
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
  let { state } = open(opened);
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
    const before = performance.now();
    state = transition(state, { did: 'judged', at: later(1), verdict, by: 'key', heard: null }).state;
    judging.push(performance.now() - before);
    const again = performance.now();
    look(state);
    suggesting.push(performance.now() - again);
  }
}
