// What is read off the belief about the two ends, the finish, the outcome and the holds to come, as it was, after every hold of seeded
// series on several scales, some of them of a lens that was swept before.
import { expect, test } from 'vitest';
import { modest } from '../../../src/sweep/belief/belief.ts';
import { readiness } from '../../../src/sweep/end/care.ts';
import { surestOf, surestValue, withinOneStep } from '../../../src/sweep/end/confidence.ts';
import { endsOf, heldValues, type Ends } from '../../../src/sweep/end/ends.ts';
import { nearestMiddle, outcomeOf } from '../../../src/sweep/end/outcome.ts';
import { holdsToCome } from '../../../src/sweep/end/remaining.ts';
import type { Memory } from '../../../src/sweep/memory.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { seconds, steps } from '../../../src/units.ts';
import { COARSE, drawn, type Terms } from '../drawn.ts';
import { oneLine } from '../../kept/oneLine.ts';

const BEFORE: Memory = { centres: [{ centre: 1, sd: 1.5, weight: 0.8 }], halfWidth: null, ends: { low: steps(-2), high: steps(4) } };
const CARES = ['quick', 'standard', 'thorough'] as const;

const SERIES: Readonly<Record<string, readonly Terms[]>> = {
  plain: [{}, {}, {}, { count: 14, bandAt: () => [-2.4, 3.6] }, { count: 14, bandAt: () => [0.8, 1.2] }],
  'past a limit': [
    { bandAt: () => [4, 12] },
    { bandAt: () => [-13, -2] },
    { bandAt: () => [-12, 12] },
    { bandAt: () => [10, 14] },
    { bandAt: () => [-14, -9] },
  ],
  'in strides of two, with arrows': [
    { scale: COARSE, arrows: 'right-is-up' },
    { scale: COARSE, arrows: 'right-is-down', bandAt: () => [2, 9] },
  ],
  'swept before': [
    { memory: BEFORE, bandAt: () => [-2.4, 4.4], values: [0, 1, 4, -3, -2, 5, 4] },
    { memory: BEFORE, bandAt: () => [-1.5, 4.5] },
  ],
};

const short = (ends: Ends | null) => ends && [ends.low, ends.high].map((end) => Object.values(end).join(' '));

test.each(Object.keys(SERIES))('series %s', (name) => {
  const rows = (SERIES[name] ?? []).flatMap((terms, nth) => {
    const { beliefs, holds } = drawn(40 + nth + name.length, terms);
    return beliefs.map((belief, at) => {
      const held = heldValues(holds.slice(0, at + 1));
      const ready = CARES.map((care) => {
        const now = readiness(belief, held, care);
        return [now.ready ? now.as : now.wanted, holdsToCome(belief, now, care)].join(' ');
      });
      const { tally: _, ...outcome } = outcomeOf(belief, held, { holds: held.length, seconds: seconds(60) });
      return oneLine([short(endsOf(belief, held)), ready, Object.values(outcome)]);
    });
  });
  expect(rows).toMatchSnapshot();
});

test('how sure the sweep is of each value, and the middle of a band that it would choose', () => {
  const rows = [1, 2, 3, 4].map((seed) => {
    const { belief } = drawn(seed, seed === 4 ? { scale: COARSE } : {});
    const { scale, values } = belief.model;
    const middles = [-20, scale.min, 0.5, 1, 2, 3.5, scale.max, scale.max + 0.5, 30].map((middle) => Object.values(nearestMiddle(belief, middle)).join(' '));
    return oneLine([
      values.map((value) => withinOneStep(belief, value)),
      Object.values(surestValue(belief)),
      withinOneStep(modest(belief), steps(40)),
      middles,
    ]);
  });
  const random = seededRandom(9);
  const centres = Float64Array.from({ length: 30 }, () => Math.floor(18 * random() - 4) / 2);
  const weights = centres.map(() => random());
  expect([...rows, oneLine([1, 2, 3, 7].map((places) => Object.values(surestOf(centres, weights, places))))]).toMatchSnapshot();
});

test('the holds to come are counted from how wide, how doubtful and how open it is', () => {
  const belief = drawn(2, { count: 3 }).belief;
  const end = (known: 'open' | 'seen' | 'settled' | 'past' | 'as before', heldIn = false, heldOut = false) =>
    ({ known, last: steps(0), next: steps(1), heldIn, heldOut }) as Ends['low'];
  const all = [end('open'), end('open', true), end('open', false, true), end('open', true, true), end('seen'), end('settled'), end('past'), end('as before')];
  const rows = CARES.map((care) =>
    [null, ...all.map((low) => ({ low, high: end('settled') })), ...all.map((high) => ({ low: end('open'), high }))].map((ends) =>
      holdsToCome(belief, { ready: false, wanted: 'centre', ends }, care),
    ),
  );
  expect(rows.map((row) => row.join(' '))).toMatchSnapshot();
});
