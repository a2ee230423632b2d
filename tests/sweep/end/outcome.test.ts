import { expect, test } from 'vitest';
import { openBelief, weigh, type Belief } from '../../../src/sweep/belief/belief.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import { readiness } from '../../../src/sweep/end/care.ts';
import { surestOf, surestValue, withinOneStep } from '../../../src/sweep/end/confidence.ts';
import { endsOf } from '../../../src/sweep/end/ends.ts';
import { outcomeOf } from '../../../src/sweep/end/outcome.ts';
import type { Hold } from '../../../src/sweep/hold.ts';
import { read, type Verdict } from '../../../src/sweep/verdict.ts';
import { moment, seconds, steps } from '../../../src/units.ts';
import { noiseFreeLight } from '../noiseFree.ts';

const opening = openBelief({ min: steps(-10), max: steps(10), step: 1 }, false, NO_MEMORY);

/** The belief and the holds after a band was held, without noise, at these values. */
function held(band: readonly [number, number], ...values: readonly number[]): { belief: Belief; holds: Hold[] } {
  return heldAs(values.map((value) => [value, noiseFreeLight(...band, value)]));
}

function heldAs(seen: readonly (readonly [number, Verdict])[]): { belief: Belief; holds: Hold[] } {
  let belief = opening;
  const holds = seen.map(([value, verdict]): Hold => {
    const reading = read(verdict, 'absent');
    const step = weigh(belief, steps(value), reading);
    belief = step.belief;
    return { value: steps(value), verdict, reading, began: moment(0), ended: moment(0), by: 'key', heard: null, predictive: step.predictive };
  });
  return { belief, holds };
}

const outcome = ({ belief, holds }: { belief: Belief; holds: Hold[] }) => outcomeOf(belief, counted(holds), { holds: holds.length, seconds: seconds(60) });
const counted = (holds: readonly Hold[]) => holds.map(({ value, reading }) => ({ value, counts: reading.counts }));
const readyAs = ({ belief, holds }: { belief: Belief; holds: Hold[] }, care: 'quick' | 'standard' = 'standard') => readiness(belief, counted(holds), care);

test('an odd count of values that hold gives the middle one', () => {
  expect(outcome(held([-2, 4], 0, -2, -3, 4, 5))).toMatchObject({ found: 'band', low: -2, high: 4, centre: 1, chosen: 1, other: null });
});

test('an even count whose two middles are equally likely gives the one nearer zero, and the other beside it', () => {
  expect(outcome(held([-1, 2], -1, -2, 2, 3))).toMatchObject({ centre: 0.5, chosen: 0, other: 1 });
  expect(outcome(held([-2, 1], -2, -3, 1, 2))).toMatchObject({ centre: -0.5, chosen: 0, other: -1 });
});

test('an even count with more belief on one side takes that side', () => {
  // +5 failed only just, 0 failed far out: the low end is the sharper one, so the centre leans up.
  const leaning = heldAs([
    [1, { light: 'steady', arrows: 'none' }],
    [0, { light: 'dark', arrows: 'none' }],
    [4, { light: 'steady', arrows: 'none' }],
    [5, { light: 'late', arrows: 'none' }],
    [5, { light: 'steady', arrows: 'none' }],
    [5, { light: 'late', arrows: 'none' }],
    [5, { light: 'late', arrows: 'none' }],
  ]);
  expect(outcome(leaning)).toMatchObject({ centre: 2.5, chosen: 3, other: null });
});

test('a band of one value is that value', () => {
  expect(outcome(held([3, 3], 3, 2, 4, 3, 2, 4))).toMatchObject({ low: 3, high: 3, centre: 3, chosen: 3 });
});

test('the interval holds the centre, and the time and holds are counted', () => {
  const found = outcome(held([-2, 4], 0, -2, -3, 4, 5));
  expect(found).toMatchObject({ tally: { holds: 5, seconds: 60 } });
  if (found.found !== 'band') throw new Error('no band');
  expect(found.interval.from).toBeLessThan(1);
  expect(found.interval.to).toBeGreaterThan(1);
});

test('nothing that holds is said to be nothing', () => {
  expect(outcome(held([40, 40], 0, 3, -3))).toMatchObject({ found: 'nothing' });
});

test('a band that runs past the limit gives only a bound', () => {
  const past = held([4, 30], 0, 4, 3, 10, 10, 10, 8);
  expect(readyAs(past)).toMatchObject({ ready: true, as: 'past the limit' });
  expect(outcome(past)).toMatchObject({ found: 'past the limit', side: 'high', visible: 4, bound: 7 });
});

test('an end is seen when the last value that holds and the next one out have both been held', () => {
  const { belief, holds } = held([-2, 4], 0, -2, -3, 4);
  expect(endsOf(belief, counted(holds))).toMatchObject({ low: { last: -2, next: -3 }, high: { known: 'open' } });
  expect(endsOf(belief, counted(holds))?.low.known).toMatch(/seen|settled/);
});

test('standard care wants both ends seen, quick care only a sure centre', () => {
  const centred = held([-2, 4], 0, 5, -3, 3, -1, 5, -3, 5, -3);
  expect(readyAs(centred, 'quick').ready).toBe(true);
  expect(readyAs(centred)).toMatchObject({ ready: false, wanted: 'ends' });
  expect(readyAs(held([-2, 4], 0, 5, -3, 4, -2, 5, -3)).ready).toBe(true);
});

test('a centre exactly one step away counts half', () => {
  expect(surestOf(Float64Array.of(2, 3), Float64Array.of(0.5, 0.5), 6)).toEqual({ index: 2, within: 0.75 });
});

test('the surest value is the one within a step of which most belief lies', () => {
  const { belief } = held([-2, 4], 0, -2, -3, 4, 5);
  const { value, within } = surestValue(belief);
  expect(value).toBe(1);
  expect(within).toBe(withinOneStep(belief, steps(1)));
  expect(within).toBeGreaterThan(withinOneStep(belief, steps(2)));
});
