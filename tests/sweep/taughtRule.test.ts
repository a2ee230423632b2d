// The taught rule: the correction is the middle of the contiguous values that hold (common practice, no source).
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { USUAL_SCALE, type Scale } from '../../src/sweep/scale.ts';
import { steps } from '../../src/units.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import { noiseFreeSweeps, ranWith } from './noiseFree.ts';
import { opened } from './staged.ts';

const SHORT: Scale = { min: steps(-10), max: steps(10), step: 1 };

/** Any band with both ends inside the scale. */
const bandInside = ({ min, max }: Scale) =>
  fc.tuple(fc.integer({ min: min + 1, max: max - 1 }), fc.integer({ min: min + 1, max: max - 1 })).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);

test.each([
  ['\u00b110', SHORT, 20],
  ['\u00b120', USUAL_SCALE, 4],
] as const)(
  'on a scale of %s every band comes out as the values that hold, and their middle',
  (_, scale, numRuns) => {
    const sweep = noiseFreeSweeps(scale);
    fc.assert(
      fc.property(bandInside(scale), ([low, high]) => {
        const outcome = sweep(low, high);
        expect(outcome).toMatchObject({ found: 'band', ends: 'seen', low, high, centre: (low + high) / 2 });
        const middles = [Math.floor((low + high) / 2), Math.ceil((low + high) / 2) + 0];
        const chosen = outcome?.found === 'band' ? [outcome.chosen, outcome.other ?? outcome.chosen] : [];
        expect(middles).toEqual(expect.arrayContaining(chosen));
        expect(chosen.length).toBe(2);
      }),
      { numRuns, examples: [[[0, 0]], [[-9, 9]], [[4, 5]], [[scale.min + 1, scale.min + 1]]] },
    );
  },
  60_000,
);

// Edges laid on the values themselves had the value beside an end in one time in three, whatever it showed: it was asked for twenty times.
test.each([
  [-8, 9],
  [-3, 6],
  [-30, -20],
  [30, 47],
] as const)('on a scale of \u00b150 a light that never wavers is found out without holding one value over and over (%i to %i)', (low, high) => {
  const { phase, holds } = ranWith(openSweep(opened({ scale: { min: steps(-50), max: steps(50), step: 1 }, arrows: 'absent' })).state, low, high);
  expect(phase).toMatchObject({ outcome: { found: 'band', ends: 'seen', low, high, centre: (low + high) / 2 } });
  expect(Math.max(...holds.map(({ value }) => holds.filter((hold) => hold.value === value).length))).toBeLessThanOrEqual(3);
  expect(holds.length).toBeLessThanOrEqual(16);
});
