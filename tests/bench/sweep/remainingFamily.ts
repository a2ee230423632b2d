// "About n of m holds": is m within two of what the sweep takes in the end? Read in the middle of the sweep, and over all its
// holds; on observers that the guess was not fitted to.
import { least, most, shown, type Family } from '../figure.ts';
import { sideBySide } from './pool.ts';
import type { RemainingSummary } from './remainingJob.ts';

const RUNS = 60;
/** No other family and no fit meets these. */
const FROM = 30_000;
const CARES = ['quick', 'standard', 'thorough'] as const;
const EIGHT_OF_TEN = 0.8;

export const remaining: Family = {
  name: 'remaining',
  async run({ tell }) {
    const cases = CARES.flatMap((care) =>
      ['arrows', 'no arrows'].flatMap((light) => ['softness 0.3', 'softness 0.8'].map((observers) => ({ care, light, observers }))),
    );
    const calls = cases.map(({ care, light, observers }) => [care, light, observers, String(FROM), String(RUNS)]);
    const summaries = await sideBySide<RemainingSummary>('tests/bench/sweep/remainingJob.ts', calls, ({ runs, middle, share }, call, done) =>
      tell(`${done}/${calls.length} ${call.slice(0, 3).join(', ')}: in the middle ${(middle / runs).toFixed(2)}, over the holds ${(share / runs).toFixed(2)}`),
    );
    const of = (all: readonly RemainingSummary[], count: (one: RemainingSummary) => number): number =>
      all.reduce((sum, one) => sum + count(one), 0) / all.reduce((sum, { runs }) => sum + runs, 0);
    const ofCare = (care: string) => summaries.filter((_, index) => cases[index]?.care === care);
    const times = summaries.flatMap((one) => one.times).toSorted((a, b) => a - b);
    return [
      shown('sweeps', RUNS * calls.length),
      least(
        'within two holds in the middle of the sweep',
        of(summaries, ({ middle }) => middle),
        EIGHT_OF_TEN,
      ),
      least(
        'within two holds, over all holds of a sweep',
        of(summaries, ({ share }) => share),
        EIGHT_OF_TEN,
      ),
      shown(
        'within two holds at every hold',
        of(summaries, ({ always }) => always),
      ),
      ...CARES.flatMap((care) => {
        const figure = care === 'thorough' ? shown : (name: string, value: number) => least(name, value, EIGHT_OF_TEN);
        return [
          figure(
            `${care}: in the middle`,
            of(ofCare(care), ({ middle }) => middle),
          ),
          figure(
            `${care}: over all holds`,
            of(ofCare(care), ({ share }) => share),
          ),
          shown(
            `${care}: at every hold`,
            of(ofCare(care), ({ always }) => always),
          ),
        ];
      }),
      most('one guess: median, ms', times[Math.floor(times.length / 2)] ?? Number.NaN, 1),
      shown('one guess: 99 of 100 within, ms', times[Math.floor(times.length * 0.99)] ?? Number.NaN),
    ];
  },
};
