// Whole sweeps through the reducer in a process of its own, on a camera with one thing wrong or with nothing: which
// troubles were named by the time the finish was offered. Asked about the focus, the person tells what is true. Every camera
// is swept a second time, as it was or with its band moved, and the two sweeps are compared as the logbook does.
import { estimateOf, sweepsDiffer } from '../../../src/logbook/combined.ts';
import { halfPress, type PracticeCamera } from '../../../src/practice/camera.ts';
import { oddPress } from '../../../src/practice/oddCamera.ts';
import type { Oddity } from '../../../src/sweep/oddity.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { ORDINARY } from './jobs.ts';
import { observer } from './observers.ts';
import type { Before } from './otherObservers.ts';
import { sweeper, type Ended } from './reducerSweep.ts';

/** What is wrong: nothing, an oddity met by the search or by a person who steps through the band, a band moved in between. */
export type Wrong = Oddity | 'nothing' | 'hole in the band, stepped through' | 'moved between two sweeps';

export interface TroublesSummary {
  readonly runs: number;
  readonly holds: number;
  /** Sweeps in which each was named. */
  readonly named: Readonly<Record<string, number>>;
  /** Sweeps in which any was named but a moved focus. */
  readonly any: number;
}

/** How far the band moves between two sweeps, in steps. */
const MOVED = 4;
const LIMIT = 20;
/** Seeds of the second sweeps lie apart from those of the first. */
const SECOND = 7919;

const [wrong, light, familyName, from, runs] = process.argv.slice(2) as [Wrong, string, string, string, string];
const arrows = light === 'arrows';
const family = ORDINARY.find(({ name }) => name === familyName);
if (!family) throw new Error(`No family of observers is called ${familyName}.`);
const sweep = sweeper({ care: 'standard', arrows: arrows ? 'right-is-up' : 'absent', looks: wrong === 'focus moves' ? 'stop' : 'go on' });
const summary = { runs: Number(runs), holds: 0, named: {} as Record<string, number>, any: 0 };

for (let run = Number(from); run < Number(from) + Number(runs); run++) {
  const { camera, random } = observer(family, run, arrows);
  const first = swept(camera, random, run);
  const named = new Set<string>(first.named);
  if (wrong === 'nothing' || wrong === 'moved between two sweeps') {
    const shift = wrong === 'nothing' ? 0 : camera.low + camera.high > 0 ? -MOVED : MOVED;
    const moved = { ...camera, low: camera.low + shift, high: camera.high + shift };
    if (differ(first, swept(moved, seededRandom(SECOND * run + 7), run))) named.add('sweeps differ');
  }
  for (const name of named) summary.named[name] = (summary.named[name] ?? 0) + 1;
  if ([...named].some((name) => name !== 'focus moved')) summary.any++;
  summary.holds += first.holds / Number(runs);
}
console.log(JSON.stringify(summary satisfies TroublesSummary));

function swept(camera: PracticeCamera, random: () => number, run: number): Ended {
  const press = (value: number, before: Before) => {
    if (wrong === 'nothing' || wrong === 'moved between two sweeps') return halfPress(camera, value, random);
    return oddPress(camera, wrong === 'hole in the band, stepped through' ? 'hole in the band' : wrong, value, before.holds + 1, run, random);
  };
  return sweep(press, wrong === 'hole in the band, stepped through' ? throughBand(camera) : []);
}

function throughBand({ low, high }: PracticeCamera): number[] {
  const all = Array.from({ length: Math.ceil(high) - Math.floor(low) + 1 }, (_, step) => Math.floor(low) + step);
  return all.filter((value) => Math.abs(value) <= LIMIT);
}

function differ(...pair: readonly [Ended, Ended]): boolean {
  const estimates = pair.flatMap(({ outcome }) => (outcome.found === 'band' ? (estimateOf(outcome) ?? []) : []));
  return sweepsDiffer(estimates) !== null;
}
