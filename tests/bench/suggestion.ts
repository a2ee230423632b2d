// How long the panel thinks: one reading weighed and one suggestion made, at 41 values, over a whole sweep.
import { most, shown, type Family } from './figure.ts';
import type { Taken } from './suggestionJob.ts';
import { sideBySide } from './sweep/pool.ts';

/** One frame of a screen that draws sixty a second, and what a suggestion may take of it. */
const FRAME = 16;
const SUGGESTION = 10;

export const suggestion: Family = {
  name: 'suggestion',
  async run() {
    const times = [...(await timed('absent', 'no arrows')), ...(await timed('right-is-up', 'arrows'))];
    return times.flatMap(({ name, times: all, bound }) => {
      const sorted = all.toSorted((a, b) => a - b);
      const at = (share: number): number => sorted[Math.floor(sorted.length * share)] ?? 0;
      const tail = `${name}: 95th percentile, ms`;
      return [shown(`${name}: median, ms`, at(0.5)), bound === null ? shown(tail, at(0.95)) : most(tail, at(0.95), bound)];
    });
  },
};

async function timed(arrows: string, light: string) {
  const [taken] = await sideBySide<Taken>('tests/bench/suggestionJob.ts', [[arrows]], () => undefined);
  if (!taken) throw new Error('No suggestion was timed.');
  return [
    { name: `one suggestion, ${light}`, times: taken.suggesting, bound: SUGGESTION },
    { name: `the closing check, ${light}`, times: taken.closing, bound: FRAME },
    { name: `from a verdict to the next phase, ${light}`, times: taken.judging, bound: null },
  ];
}
