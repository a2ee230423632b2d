// Contract of each story alone: it grows with evidence for it and sinks with evidence against it; and the urn's chance of a
// run of equal lights is the one worked out by hand.
import { describe, expect, test } from 'vitest';
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

describe('a light that is the same everywhere, by hand', () => {
  const VALUES = [-4, -3, -2, -1, 0, 1, 2, 3, 4];
  const model = { scale: { min: -4, max: 4, step: 1 }, values: VALUES } as unknown as Belief['model'];
  type Side = 'above' | 'below' | 'untold';
  const dark = (value: number, side: Side = 'untold', grade: 'dark' | 'flicker' | 'near' | 'untold' = 'dark') =>
    ({ value, reading: { counts: 'out', grade, side }, predictive: 0.5 }) as Parameters<typeof sameEverywhere>[1][number];
  const held = (value: number) => ({ value, reading: { counts: 'in' }, predictive: 0.5 }) as Parameters<typeof sameEverywhere>[1][number];
  const told = (...holds: ReturnType<typeof dark>[]) => sameEverywhere({ model }, holds);
  const apart = [-4, -3, -2, -1, 1, 2, 3, 4];
  /** Of so many dark ones, out of the urn of 13.5 with 12 dark, against a half each. */
  const urn = (count: number): number => Array.from({ length: count }, (_, at) => (12 + at) / (13.5 + at) / 0.5).reduce((all, each) => all * each, 1);

  test('arrows beside it point to one place, whichever it is, or by chance', () => {
    const towards = told(...apart.map((value) => dark(value, value === -4 ? 'above' : value === 4 ? 'below' : 'untold')));
    // Chance: a quarter. Of nine places seven are pointed to twice; the two that were held point half and half.
    expect(towards?.bayesFactor).toBeCloseTo(urn(8) * ((0.25 + (7 * 0.95 ** 2 + 2 * 0.95 * 0.5) / 9) / 2), 6);
    const away = told(...apart.map((value) => dark(value, value === -4 ? 'below' : value === 4 ? 'above' : 'untold')));
    expect(away?.bayesFactor).toBeCloseTo(urn(8) * ((0.25 + (7 * 0.05 ** 2 + 2 * 0.05 * 0.5) / 9) / 2), 6);
    expect(told(...apart.map((value) => dark(value)))?.bayesFactor).toBeCloseTo(urn(8), 6);
  });

  test('a failure without a grade stands for each, by what was seen of them', () => {
    // 13.3 of 13.5 are failures; the next draw is dark from 12 and the share of the untold one.
    const holds = [dark(-4, 'untold', 'untold'), ...apart.slice(1).map((value) => dark(value))];
    const first = 13.3 / 13.5 / 0.5;
    const grown = 12 + 12 / 13.3;
    const rest = Array.from({ length: 7 }, (_, at) => (grown + at) / (14.5 + at) / 0.5).reduce((all, each) => all * each, 1);
    expect(told(...holds)).toMatchObject({ trouble: 'never lights', alike: 7, of: 8 });
    expect(told(...holds)?.bayesFactor).toBeCloseTo(first * rest, 6);
  });

  test('eight holds are wanted, over 0.6 of the scale for dark, 0.3 for a flicker, all of it for steady', () => {
    const repeated = (values: readonly number[], hold: (value: number) => ReturnType<typeof dark>) => told(...values.map((value) => hold(value)));
    expect(repeated(apart.slice(1), dark)).toBeNull();
    // Five of eight steps is 0.625.
    expect(repeated([-2, 3, -2, 3, -2, 3, -2, 3], dark)?.trouble).toBe('never lights');
    expect(repeated([-2, 2, -2, 2, -2, 2, -2, 2], dark)).toBeNull();
    const flicker = (value: number) => dark(value, 'untold', 'flicker');
    expect(repeated([0, 3, 0, 3, 0, 3, 0, 3], flicker)?.trouble).toBe('flickers everywhere');
    expect(repeated([0, 2, 0, 2, 0, 2, 0, 2], flicker)).toBeNull();
    expect(repeated([-4, 4, -4, 4, -4, 4, -4, 4], held)?.trouble).toBe('lights everywhere');
    expect(repeated([-4, 3, -4, 3, -4, 3, -4, 3], held)).toBeNull();
  });

  test('four values in five must look so each time', () => {
    const others = (count: number) =>
      told(...[-4, -3, -2, 2, 4].map((value, at) => (at < count ? held(value) : dark(value))), ...[-2, 2, 4].map((value) => dark(value)));
    expect(others(0)).toMatchObject({ alike: 5, of: 5 });
    expect(others(1)).toMatchObject({ trouble: 'never lights', alike: 4, of: 5 });
    expect(others(2)).toBeNull();
  });
});
