// Whole sweeps through the reducer in a process of its own: how often the number of holds that stood on the screen was within
// two of what the sweep took in the end. One that was never offered to finish was never told true.
import { halfPress } from '../../../src/practice/camera.ts';
import type { Care } from '../../../src/sweep/care.ts';
import { readiness } from '../../../src/sweep/end/care.ts';
import { heldValues } from '../../../src/sweep/end/ends.ts';
import { holdsToCome } from '../../../src/sweep/end/remaining.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import { ORDINARY } from './jobs.ts';
import { observer } from './observers.ts';
import { sweeper } from './reducerSweep.ts';

export interface RemainingSummary {
  readonly runs: number;
  /** Sweeps in which it was true in the middle, and at every hold; and the sum over sweeps of the share of holds at which it was. */
  readonly middle: number;
  readonly always: number;
  readonly share: number;
  /** Milliseconds of each guess. */
  readonly times: readonly number[];
}

const WITHIN = 2;

const [care, light, familyName, from, runs] = process.argv.slice(2) as [Care, string, string, string, string];
const arrows = light === 'arrows';
const family = ORDINARY.find(({ name }) => name === familyName);
if (!family) throw new Error(`No family of observers is called ${familyName}.`);

const told: number[] = [];
const times: number[] = [];
const sweep = sweeper({ care, arrows: arrows ? 'right-is-up' : 'absent', looks: 'go on', watch });
const summary = { runs: Number(runs), middle: 0, always: 0, share: 0 };

for (let run = Number(from); run < Number(from) + Number(runs); run++) {
  told.length = 0;
  const { camera, random } = observer(family, run, arrows);
  const { ended, holds } = sweep((value) => halfPress(camera, value, random));
  const isTrue = told.map((all) => ended === 'offered' && Math.abs(all - holds) <= WITHIN);
  summary.middle += Number(isTrue[Math.ceil(isTrue.length / 2) - 1] ?? false);
  summary.always += Number(isTrue.every(Boolean));
  summary.share += isTrue.filter(Boolean).length / isTrue.length;
}

console.log(JSON.stringify({ ...summary, times } satisfies RemainingSummary));

/** Notes what the screen would say after a hold. */
function watch({ belief, holds }: SweepState): void {
  const enough = readiness(belief, heldValues(holds), care);
  const before = performance.now();
  told.push(holds.length + holdsToCome(belief, enough, care));
  times.push(performance.now() - before);
}
