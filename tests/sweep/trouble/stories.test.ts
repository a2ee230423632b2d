// Contract of each story alone: it grows with evidence for it and sinks with evidence against it; and the urn's chance of a
// run of equal lights is the one worked out by hand.
import { expect, test } from 'vitest';
import { openBelief, weigh, type Belief } from '../../../src/sweep/belief/belief.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import { arrowsAgainst } from '../../../src/sweep/trouble/arrows.ts';
import { sameEverywhere } from '../../../src/sweep/trouble/everywhere.ts';
import { holeIn } from '../../../src/sweep/trouble/hole.ts';
import { read, type Arrows, type Light } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';

const SCALE = { min: steps(-10), max: steps(10), step: 1 };

function held(arrows: boolean, ...seen: readonly (readonly [number, Light, Arrows?])[]) {
  let belief: Belief = openBelief(SCALE, arrows, NO_MEMORY);
  const holds = seen.map(([value, light, side = 'none']) => {
    const reading = read({ light, arrows: side }, arrows ? 'right-is-up' : 'absent');
    const step = weigh(belief, steps(value), reading);
    belief = step.belief;
    return { value: steps(value), reading, predictive: step.predictive };
  });
  return { belief, holds };
}

test('nine dark holds over the scale: the urn gives each the share of dark seen so far, against what the belief expected', () => {
  const { belief, holds } = held(false, ...[0, -8, 8, -4, 4, -10, 10, 6, -6].map((value) => [value, 'dark'] as const));
  // 12 dark of 13.5 expected before the first; each one seen adds one: the product of (12 + i) / (13.5 + i).
  const urn = holds.reduce((chance, _, i) => (chance * (12 + i)) / (13.5 + i), 1);
  const healthy = holds.reduce((chance, { predictive }) => chance * predictive, 1);
  expect(sameEverywhere(belief, holds)).toMatchObject({ trouble: 'never lights', alike: 9, of: 9 });
  expect(sameEverywhere(belief, holds)?.bayesFactor).toBeCloseTo(urn / healthy, 6);
});

test('a few values held over and over are not everywhere', () => {
  const seen = [
    [0, 'steady'],
    [5, 'steady'],
    [-3, 'steady'],
    ...Array.from({ length: 12 }, (_, at) => [at % 3 === 0 ? -7 : 6 + (at % 3), 'late'] as const),
  ] as const;
  const { belief, holds } = held(false, ...seen);
  expect(sameEverywhere(belief, holds)).toBeNull();
});

test('too few holds, or holds on one side of the scale only, say nothing of everywhere', () => {
  const dark = (...values: readonly number[]) => held(false, ...values.map((value) => [value, 'dark'] as const));
  const few = dark(0, -8, 8, -4, 4, -10, 10);
  expect(sameEverywhere(few.belief, few.holds)).toBeNull();
  const near = dark(0, 1, 2, 3, 4, 5, 6, 7, 8);
  expect(sameEverywhere(near.belief, near.holds)).toBeNull();
});

test('every value that holds counts only when both limits have held', () => {
  const steady = (...values: readonly number[]) => held(false, ...values.map((value) => [value, 'steady'] as const));
  const inner = steady(0, -5, 5, -8, 8, -9, 9, 2, -2);
  expect(sameEverywhere(inner.belief, inner.holds)).toBeNull();
  const all = steady(0, -5, 5, -8, 8, -10, 10, 2, -2);
  expect(sameEverywhere(all.belief, all.holds)).toMatchObject({ trouble: 'lights everywhere' });
});

test('a value that fails again and again between two that hold is a gap; one failure may be a blink', () => {
  const sides = [
    [-4, 'steady'],
    [4, 'steady'],
    [-4, 'steady'],
    [4, 'steady'],
  ] as const;
  const once = held(false, ...sides, [0, 'flicker']);
  const often = held(false, ...sides, [0, 'flicker'], [0, 'flicker'], [0, 'flicker']);
  expect(holeIn(once.belief, once.holds)).toBeNull();
  expect(holeIn(often.belief, often.holds)).toMatchObject({ from: 0, to: 0 });
  expect(holeIn(often.belief, often.holds)?.bayesFactor).toBeGreaterThan(100);
});

test('without a failure between two values that hold there is no gap to speak of', () => {
  const { belief, holds } = held(false, [-4, 'steady'], [4, 'steady'], [5, 'late'], [-6, 'flicker']);
  expect(holeIn(belief, holds)).toBeNull();
});

test('arrows as set contradict nothing; turned round, turning midway and by chance are told apart', () => {
  const lights = [
    [-4, 'steady', 'balanced'],
    [0, 'steady', 'balanced'],
  ] as const;
  const out = [-6, 3, -8, 4, -7, 5, -9, 6];
  const withSides = (sides: (up: boolean, at: number) => Arrows) =>
    held(true, ...lights, ...out.map((value, at) => [value, Math.abs(value + 2) > 5 ? 'flicker' : 'late', sides(value < -2, at)] as const));
  const as = (up: boolean): Arrows => (up ? 'right' : 'left');
  const story = ({ belief, holds }: ReturnType<typeof held>) => arrowsAgainst(belief, holds);
  expect(story(withSides((up) => as(up)))).toBeNull();
  expect(story(withSides((up) => as(!up)))).toMatchObject({ how: 'turned round' });
  expect(story(withSides((up, at) => as(at < 4 ? up : !up)))).toMatchObject({ how: 'turned midway' });
  expect(story(withSides(() => 'left'))).toMatchObject({ how: 'by chance' });
});

test('a body without arrows has none to contradict', () => {
  const { belief, holds } = held(false, [0, 'steady'], [5, 'flicker', 'right'], [-5, 'flicker', 'left']);
  expect(arrowsAgainst(belief, holds)).toBeNull();
});
