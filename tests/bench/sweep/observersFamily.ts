// Bodies, lenses and eyes that are not as the belief expects: what is stated must be true of them, too, or be doubted aloud.
import { least, most, shown, type Family, type Figure } from '../figure.ts';
import { OTHER_OBSERVERS } from './otherObservers.ts';
import type { ObserversRun } from './observersJob.ts';
import { sideBySide } from './pool.ts';

const RUNS = 1000;
const LOT = 250;
const CARE = 'standard';
/** Nothing in these holds can show that the truth is another one: here what counts is that it is doubted aloud or right. */
const BEYOND_TELLING = ['a spell of three', 'drift of 1.5 steps'];

export const observers: Family = {
  name: 'observers',
  async run({ tell }) {
    const calls = OTHER_OBSERVERS.flatMap(({ name }) => Array.from({ length: RUNS / LOT }, (_, lot) => [name, CARE, String(lot * LOT), String(LOT)]));
    const lots = await sideBySide<ObserversRun[]>('tests/bench/sweep/observersJob.ts', calls, (_, [name], done) => tell(`${done}/${calls.length} ${name}`));
    const perObserver = RUNS / LOT;
    return OTHER_OBSERVERS.flatMap(({ name }, index) => figuresOf(name, lots.slice(index * perObserver, (index + 1) * perObserver).flat()));
  },
};

function figuresOf(name: string, runs: readonly ObserversRun[]): Figure[] {
  const bands = runs.flatMap((run) => (run.band ? [{ ...run, ...run.band }] : []));
  const hard = BEYOND_TELLING.includes(name);
  const errors = bands.map(({ atEnd }) => atEnd.error).sort((a, b) => a - b);
  const covered = mean(bands, ({ atEnd }) => Number(atEnd.covered));
  const stated = mean(bands, (run) => run.stated);
  const within = mean(bands, ({ atEnd }) => Number(atEnd.off <= 1));
  const sureAndWrong = bands.filter((run) => run.stated >= 0.95 && run.atEnd.off > 2);
  const quiet = sureAndWrong.filter(({ doubted }) => !doubted);
  return [
    shown(`${name}: a band came out`, bands.length / runs.length),
    shown(
      `${name}: holds`,
      mean(runs, ({ holds }) => holds),
    ),
    shown(
      `${name}: seconds`,
      mean(runs, ({ seconds }) => seconds),
    ),
    shown(`${name}: 95th-percentile error, steps`, errors[Math.floor(errors.length * 0.95)] ?? 0),
    least(`${name}: the true centre at the end lies in the 95 % interval`, covered, hard ? 0.85 : 0.93),
    shown(
      `${name}: the true centre half-way lies in it`,
      mean(bands, ({ midway }) => Number(midway.covered)),
    ),
    shown(`${name}: within one step`, within),
    shown(`${name}: stated`, stated),
    shown(`${name}: stated less observed`, stated - within),
    shown(`${name}: sure and wrong by more than two steps`, sureAndWrong.length / bands.length),
    most(`${name}: the same, and nothing doubted aloud`, quiet.length / bands.length, 0.02),
    shown(
      `${name}: asked about the focus`,
      mean(runs, ({ asked }) => Number(asked)),
    ),
    shown(
      `${name}: a trouble stands at the end`,
      mean(runs, ({ doubted }) => Number(doubted)),
    ),
    shown(
      `${name}: the value recommended was held`,
      mean(runs, ({ proved }) => Number(proved)),
    ),
  ];
}

const mean = <Run>(runs: readonly Run[], of: (run: Run) => number): number => runs.reduce((sum, run) => sum + of(run), 0) / runs.length;
