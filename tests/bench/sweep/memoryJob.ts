// A lens measured, and measured again with what the logbook remembers: unchanged, with its band moved by a step or three since,
// and with a memory eight steps off, in a process of its own.
import { memoryFor } from '../../../src/logbook/memory.ts';
import type { LogRecord } from '../../../src/logbook/record.ts';
import { newBody, newLens, type Kit, type Situation } from '../../../src/kit/kit.ts';
import { halfPress } from '../../../src/practice/camera.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import type { BandOutcome } from '../../../src/sweep/end/outcome.ts';
import { millimetres, moment, steps } from '../../../src/units.ts';
import { ORDINARY } from './jobs.ts';
import { observer } from './observers.ts';
import { sweeper, type Ended } from './reducerSweep.ts';

export interface MemorySummary {
  readonly first: Cost;
  readonly right: Cost;
  /** Moved since by one step, and by three. */
  readonly moved: readonly [Cost, Cost];
  readonly wrong: Cost;
}

interface Cost {
  readonly holds: number;
  readonly meanError: number;
  readonly tailError: number;
  readonly confidentlyWrong: number;
  /** Share of sweeps whose 95 % interval holds the true centre. */
  readonly covered: number;
}

const OFF_BY = 8;
const MOVED_BY = [1, 3] as const;
const SITUATION: Situation = {
  id: 's',
  changed: moment(0),
  retired: null,
  body: 'b',
  lens: 'l',
  converter: null,
  focalLength: millimetres(85),
  distance: millimetres(4250),
};
const KIT: Kit = {
  bodies: [newBody('b', 'Velde M1', moment(0))],
  lenses: [newLens('l', 'Orrin 85 f/1.8', moment(0))],
  converters: [],
  situations: [SITUATION],
};

const [light, familyName, runs] = process.argv.slice(2);
const arrows = light === 'arrows';
const display = arrows ? 'right-is-up' : 'absent';
const family = ORDINARY.find(({ name }) => name === familyName);
if (!family) throw new Error(`No family of observers is called ${familyName}.`);
const firstSweep = sweeper({ care: 'standard', arrows: display });
const ends = { first: [] as Run[], right: [] as Run[], moved: [[] as Run[], [] as Run[]] as const, wrong: [] as Run[] };

interface Run extends Ended {
  readonly truth: number;
}

for (let run = 0; run < Number(runs); run++) {
  const { camera, random } = observer(family, run, arrows);
  const truth = (camera.low + camera.high) / 2;
  const press = (value: number) => halfPress(camera, value, random);
  const first = firstSweep(press);
  const { outcome } = first;
  if (first.ended !== 'offered' || outcome.found !== 'band') continue;
  const off = truth > 0 || (truth === 0 && seededRandom(run)() < 0.5) ? -OFF_BY : OFF_BY;
  const again = (remembered: BandOutcome, shift = 0) =>
    sweeper({ care: 'standard', arrows: display, memory: memoryFor(SITUATION, [recordOf(remembered, [...first.state.journal])], KIT) })((value) =>
      press(value - shift),
    );
  ends.first.push({ ...first, truth });
  ends.right.push({ ...again(outcome), truth });
  MOVED_BY.forEach((size, at) => {
    const shift = Math.sign(off) * size;
    ends.moved[at]?.push({ ...again(outcome, shift), truth: truth + shift });
  });
  ends.wrong.push({ ...again(movedBy(outcome, off)), truth });
}

const [byOne, byThree] = ends.moved;
const summary: MemorySummary = {
  first: costOf(ends.first),
  right: costOf(ends.right),
  moved: [costOf(byOne), costOf(byThree)],
  wrong: costOf(ends.wrong),
};
console.log(JSON.stringify(summary));

function movedBy(outcome: BandOutcome, off: number): BandOutcome {
  const { low, high, centre, chosen, interval } = outcome;
  return {
    ...outcome,
    low: steps(low + off),
    high: steps(high + off),
    centre: centre + off,
    chosen: steps(chosen + off),
    interval: { from: interval.from + off, to: interval.to + off },
  };
}

function recordOf(outcome: BandOutcome, journal: LogRecord['journal']): LogRecord {
  const subject = { situation: 's', body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: SITUATION.focalLength, distance: SITUATION.distance };
  return { id: 'r', finished: moment(0), practice: false, subject, outcome, journal };
}

function costOf(all: readonly Run[]): Cost {
  const bands = all.flatMap(({ ended, outcome, truth }) => (ended === 'offered' && outcome.found === 'band' ? [{ outcome, truth }] : []));
  const errors = bands.map(({ outcome, truth }) => Math.abs(outcome.centre - truth)).sort((a, b) => a - b);
  const wrong = bands.filter(({ outcome, truth }) => outcome.within >= 0.95 && Math.abs(outcome.chosen - truth) > 2);
  return {
    holds: all.reduce((sum, { holds }) => sum + holds, 0) / all.length,
    meanError: errors.reduce((sum, error) => sum + error, 0) / errors.length,
    tailError: errors[Math.floor(errors.length * 0.95)] ?? 0,
    confidentlyWrong: wrong.length / all.length,
    covered: bands.filter(({ outcome: { interval }, truth }) => interval.from <= truth && truth <= interval.to).length / bands.length,
  };
}
