// What is so exactly at the limits of the troubles (common practice, no source): how many holds, how far apart, how many alike, which
// odds; and how each story of the holds is named.
import { describe, expect, test } from 'vitest';
import type { Posterior } from '../../../src/sweep/belief/grid.ts';
import type { Story, Weighed } from '../../../src/sweep/end/story.ts';
import type { Hold } from '../../../src/sweep/hold.ts';
import { arrowsAgainst } from '../../../src/sweep/trouble/arrows.ts';
import { sameEverywhere } from '../../../src/sweep/trouble/everywhere.ts';
import { holeIn } from '../../../src/sweep/trouble/hole.ts';
import type { Trouble } from '../../../src/sweep/trouble/trouble.ts';
import { isHopeless, leavesNothing, troublesOf } from '../../../src/sweep/trouble/troublesOf.ts';
import { steps } from '../../../src/units.ts';
import { drawn } from '../drawn.ts';

const { opening } = drawn(1);
const out = (value: number, grade: 'near' | 'flicker' | 'dark' | 'untold', predictive = 0.1) =>
  ({ value: steps(value), reading: { counts: 'out', grade, side: 'untold' }, predictive }) as unknown as Hold;
const into = (value: number, predictive = 0.1) => ({ value: steps(value), reading: { counts: 'in' }, predictive }) as unknown as Hold;
const told = (holds: readonly Hold[]) => sameEverywhere(opening, holds)?.trouble ?? null;

describe('a light that is the same everywhere', () => {
  test('wants eight holds', () => {
    const flickering = [-5, 5, 0, 1, 2, 3, 4, -1].map((value) => out(value, 'flicker'));
    expect([told(flickering), told(flickering.slice(0, 7))]).toEqual(['flickers everywhere', null]);
  });

  test('must be seen over three tenths of the scale where it flickers, six tenths where it is dark, all of it where it holds', () => {
    const over = (of: (value: number) => Hold, from: number, to: number) => told([from, to, 0, 1, 0, 1, 0, 1].map(of));
    // Of ten steps.
    expect([over((value) => out(value, 'flicker'), -1, 2), over((value) => out(value, 'flicker'), 0, 2)]).toEqual(['flickers everywhere', null]);
    expect([over((value) => out(value, 'dark'), -3, 3), over((value) => out(value, 'dark'), -2, 3)]).toEqual(['never lights', null]);
    expect([over(into, -5, 5), over(into, -4, 5), over(into, -5, 4)]).toEqual(['lights everywhere', null, null]);
  });

  test('must look so at four values of five, each time', () => {
    const dark = (others: readonly number[]) =>
      sameEverywhere(
        opening,
        [3, -3, -1, 0, 1, 0, 1, 3].map((value, at) => (others.includes(at) ? out(value, 'flicker') : out(value, 'dark'))),
      );
    expect(dark([2])).toMatchObject({ trouble: 'never lights', alike: 4, of: 5 });
    // Once is enough for a value to look otherwise.
    expect(dark([7])).toMatchObject({ alike: 4, of: 5 });
    expect(dark([2, 7])?.trouble).not.toBe('never lights');
    expect(
      sameEverywhere(
        opening,
        [-3, 3, 0, 1, 2, -1, -2, 0].map((value) => out(value, value === 0 ? 'untold' : 'dark')),
      ),
    ).toMatchObject({ alike: 6, of: 7 });
  });
});

describe('which troubles are named', () => {
  const bands: Posterior = { which: new Int32Array(0), mass: new Float64Array(0) };
  const story = (one: Story, bayesFactor: number): Weighed => ({ story: one, bayesFactor, bands });
  const holds = [3, 1, 2, 1].map((value) => into(value));
  const named = (drift: number | null, ...stories: readonly Weighed[]) =>
    troublesOf(opening, holds, drift === null ? null : { bayesFactor: drift, afterHold: 2 }, stories);

  test('those at odds of fifty that are at most ten times less likely than the likeliest, which comes first', () => {
    expect(named(null, story({ is: 'play', size: -0.5 }, 50))).toEqual([{ trouble: 'play', bayesFactor: 50, size: 0.5 }]);
    expect(named(null, story({ is: 'play', size: 1 }, 49.99))).toEqual([]);
    const both = named(500, story({ is: 'drifting', rate: -0.7 }, 50));
    expect(both).toEqual([
      { trouble: 'focus moved', bayesFactor: 500, afterHold: 2, seen: false },
      { trouble: 'band drifts', bayesFactor: 50, rate: -0.7 },
    ]);
    expect(named(501, story({ is: 'drifting', rate: -0.7 }, 50))).toHaveLength(1);
    expect(named(60, story({ is: 'drifting', rate: 1.4 }, 80)).map(({ trouble }) => trouble)).toEqual(['band drifts', 'focus moved']);
    expect(named(7)).toHaveLength(1);
    expect(troublesOf(opening, [], { bayesFactor: 500, afterHold: 2 }, [])).toEqual([]);
  });

  test('misjudged holds with each of their values once, the lowest first', () => {
    expect(named(null, story({ is: 'misjudged', from: 0, to: 2 }, 60))).toEqual([{ trouble: 'verdicts misjudged', bayesFactor: 60, values: [1, 2, 3] }]);
    expect(named(null, story({ is: 'misjudged', from: 1, to: 3 }, 60))).toMatchObject([{ values: [1, 2] }]);
  });

  test('with three of them more holds tell nothing, and with two of those there is no band', () => {
    const all = ['flickers everywhere', 'never lights', 'lights everywhere', 'hole in the band', 'play'].map((trouble) => ({ trouble }) as Trouble);
    expect(all.map(isHopeless)).toEqual([true, true, true, false, false]);
    expect(all.map(leavesNothing)).toEqual([true, true, false, false, false]);
  });
});

test('a hole wants two failures between the outermost values that held, and values on both sides of it', () => {
  const hole = (...holds: readonly Hold[]) => holeIn(opening, holds);
  expect(hole(into(-3), into(3), out(0, 'flicker'), out(0, 'flicker'))).toMatchObject({ from: 0, to: 0 });
  expect(hole(into(-3), into(3), out(0, 'flicker'))).toBeNull();
  expect(hole(into(-3), into(0), out(0, 'flicker'), out(0, 'flicker'))).toBeNull();
  expect(hole(into(0), into(3), out(0, 'flicker'), out(0, 'flicker'))).toBeNull();
  expect(hole(into(-3), into(3), out(1, 'dark'), out(0, 'flicker'), out(2, 'near'))).toMatchObject({ from: 0, to: 2 });
  // No hole is wider than four values.
  expect(hole(into(-5), into(5), out(-2, 'dark'), out(2, 'dark'))).toBeNull();
  expect(hole(into(-5), into(5), out(-2, 'dark'), out(1, 'dark'))).toMatchObject({ from: -2, to: 1 });
});

test('arrows contradict the lights only where two of them point away from the centre, from a step off or more', () => {
  const arrows = drawn(1, { arrows: 'right-is-up' }).opening;
  const points = (value: number, side: 'above' | 'below' | 'untold') =>
    ({ ...out(value, 'dark'), reading: { counts: 'out', grade: 'dark', side } }) as unknown as Hold;
  // Before any hold the centre is believed at 0.
  const against = (...holds: readonly Hold[]) => arrowsAgainst(arrows, holds) !== null;
  expect([against(points(3, 'above'), points(-3, 'below')), against(points(3, 'above'))]).toEqual([true, false]);
  expect([against(points(3, 'below'), points(-3, 'above')), against(points(3, 'untold'), points(-3, 'below'))]).toEqual([false, false]);
  expect(against(into(3), points(-3, 'below'))).toBe(false);
  expect(against(points(0, 'above'), points(0, 'below'))).toBe(false);
  expect(arrowsAgainst(opening, [points(3, 'above'), points(-3, 'below')])).toBeNull();
});
