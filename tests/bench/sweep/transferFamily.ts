// Pairs at the end of the scale and past it: what is stated of the true centre must be true, whichever way it was found.
import { least, shown, type Family, type Figure } from '../figure.ts';
import { sideBySide } from './pool.ts';
import type { Road, TransferRun } from './transferJob.ts';

/** For each light, with and without arrows. */
const RUNS = 300;
const LOT = 150;
const ROADS: readonly Road[] = ['on the scale', 'carried from the visible end', 'never lit'];

export const transfer: Family = {
  name: 'transfer',
  async run({ tell }) {
    const terms = ['0.3', '0.8'].flatMap((softness) => ['no arrows', 'arrows'].map((arrows) => ({ softness, arrows })));
    const calls = terms.flatMap(({ softness, arrows }) => Array.from({ length: RUNS / LOT }, (_, lot) => [arrows, softness, String(LOT), String(lot * LOT)]));
    const lots = await sideBySide<TransferRun[]>('tests/bench/sweep/transferJob.ts', calls, (_, call, done) =>
      tell(`${done}/${calls.length} ${call.join(', ')}`),
    );
    const perTerm = RUNS / LOT;
    return terms.flatMap(({ softness, arrows }, index) =>
      figuresOf(`softness ${softness}, ${arrows}, standard`, lots.slice(index * perTerm, (index + 1) * perTerm).flat()),
    );
  },
};

function figuresOf(name: string, runs: readonly TransferRun[]): Figure[] {
  const beyond = runs.filter((run) => run.beyond);
  return [
    least(
      `${name}: the true centre lies in the 95 % interval`,
      share(runs, ({ covered }) => covered),
      0.93,
    ),
    shown(
      `${name}: holds, both series`,
      mean(runs, ({ holds }) => holds),
    ),
    shown(
      `${name}: centre found less the true one, steps`,
      mean(runs, ({ error }) => error),
    ),
    shown(
      `${name}: times the focus was turned, where it was`,
      mean(
        runs.filter(({ turns }) => turns > 0),
        ({ turns }) => turns,
      ),
    ),
    shown(
      `${name}: no interval came out`,
      share(runs, ({ road }) => road === null),
    ),
    shown(
      `${name}: service advised where the centre is off the scale`,
      share(beyond, ({ advised }) => advised),
    ),
    shown(
      `${name}: service advised where it is not`,
      share(
        runs.filter((run) => !run.beyond),
        ({ advised }) => advised,
      ),
    ),
    ...ROADS.flatMap((road) => {
      const some = runs.filter((run) => run.road === road);
      if (some.length === 0) return [];
      return [
        shown(`${name}: ${road}: share of runs`, some.length / runs.length),
        shown(
          `${name}: ${road}: the true centre lies in the interval`,
          share(some, ({ covered }) => covered),
        ),
        shown(
          `${name}: ${road}: length of the interval, steps`,
          mean(some, ({ length }) => length),
        ),
        shown(
          `${name}: ${road}: holds, both series`,
          mean(some, ({ holds }) => holds),
        ),
      ];
    }),
  ];
}

const mean = (runs: readonly TransferRun[], of: (run: TransferRun) => number): number => runs.reduce((sum, run) => sum + of(run), 0) / runs.length;
const share = (runs: readonly TransferRun[], is: (run: TransferRun) => boolean): number => mean(runs, (run) => Number(is(run)));
