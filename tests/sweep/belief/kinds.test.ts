// Contracts of what a belief is made of: how a light fails, how softly it gives way, which outcomes a reading allows, what is expected before the
// first hold, worked out by hand.
import { describe, expect, test } from 'vitest';
import { openBelief } from '../../../src/sweep/belief/belief.ts';
import { EDGES, SOFT } from '../../../src/sweep/belief/edges.ts';
import { afterSightings, BOUNDARIES, gradesOf, LAMPS, zonesAt } from '../../../src/sweep/belief/lamp.ts';
import { ogive } from '../../../src/sweep/belief/normalOgive.ts';
import { IN, outcomeCount, outcomesOf } from '../../../src/sweep/belief/observation.ts';
import { lampShares, plainBell, priorWeights, widthWeights } from '../../../src/sweep/belief/prior.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import { halfRange, isOnScale, nearestOn, nearestWithin, neighbour, valuesOf, writeSteps } from '../../../src/sweep/scale.ts';
import type { Reading } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';

const sum = (list: Iterable<number>): number => [...list].reduce((total, each) => total + each, 0);

describe('the lamp', () => {
  test('is one of five mixes with one of five boundaries', () => {
    expect([LAMPS.length, BOUNDARIES]).toEqual([25, 5]);
    expect(sum(LAMPS.map(({ share }) => share))).toBeCloseTo(1, 9);
    // The third mix flickers at once; the last of its boundaries is none.
    expect(LAMPS[14]).toEqual({ share: expect.closeTo(0.01, 9), lateNear: 0, lateBetween: 0, dark: 4 });
    expect(LAMPS[20]).toEqual({ share: expect.closeTo(0.09 * 0.07, 9), lateNear: 1, lateBetween: 1, dark: 0 });
  });

  test('fails as near up to a step, and is dark from its boundary, by an ogive that is softer farther out', () => {
    const zones = zonesAt(3);
    // Past the first step by 2 over 0.6; at the second boundary itself, a half; 3 before the third, over 1.1.
    expect(zones.near).toBeCloseTo(1 - ogive(2 / 0.6), 9);
    expect(zones.dark).toEqual([ogive(1.5 / 0.65), 0.5, ogive(-3 / 1.1), ogive(-7 / 1.5), 0].map((share) => expect.closeTo(share, 9)));
    // Never darker than it is past near.
    expect(zonesAt(-3).dark[0]).toBeLessThanOrEqual(1 - zonesAt(-3).near + 1e-12);
    expect(ogive(0)).toBe(0.5);
    expect(ogive(1)).toBeCloseTo(0.8458, 4);
  });

  test('gives its grades a tenth of chance', () => {
    const zones = { near: 0.5, dark: [0.2, 0, 0, 0, 0] };
    // Late: all of near; flicker: what is left beside dark.
    expect(gradesOf({ share: 1, lateNear: 1, lateBetween: 0, dark: 0 }, zones)).toEqual(
      [0.9 * 0.5, 0.9 * 0.3, 0.9 * 0.2].map((share) => expect.closeTo(share + 0.1 / 3, 9)),
    );
    expect(gradesOf({ share: 1, lateNear: 0.5, lateBetween: 0.5, dark: 4 }, zones)).toEqual(
      [0.9 * 0.5, 0.9 * 0.5, 0].map((share) => expect.closeTo(share + 0.1 / 3, 9)),
    );
  });

  test('is likelier where it was seen before, on the mean not at all', () => {
    const after = afterSightings([{ outside: 0.2, light: 'flicker' }, { outside: 4, light: 'dark' }]); // prettier-ignore
    expect(sum(after.map((times, at) => times * LAMPS[at]!.share))).toBeCloseTo(1, 9);
    // One that flickers at once and is dark from 1.5 against one that comes late and never is.
    expect(after[10]! / after[4]!).toBeGreaterThan(20);
    expect(afterSightings([])).toEqual(LAMPS.map(() => expect.closeTo(1, 9)));
  });
});

test('ends are as soft as each other in four bands of five, or by chance', () => {
  expect(SOFT).toEqual([0.3, 0.6, 1.05, 1.7]);
  expect([sum(EDGES.map(({ share }) => share)), sum(EDGES.map(({ even }) => even))]).toEqual([expect.closeTo(1, 9), expect.closeTo(1, 9)]);
  expect(EDGES[1]).toEqual({ low: 0, high: 1, share: expect.closeTo(0.2 * 0.38 * 0.36, 9), even: 0.03125 });
  expect(EDGES[5]).toEqual({ low: 1, high: 1, share: expect.closeTo(0.2 * 0.36 ** 2 + 0.8 * 0.36, 9), even: 0.15625 });
});

test('a reading allows the outcomes that it does not leave out', () => {
  const out = (grade: string, side: string) => ({ counts: 'out', grade, side }) as Reading;
  expect([outcomeCount(false), outcomeCount(true)]).toEqual([4, 7]);
  expect([outcomesOf({ counts: 'in' }, true), outcomesOf(out('flicker', 'untold'), false), outcomesOf(out('untold', 'above'), false)]).toEqual([
    [IN],
    [2],
    [1, 2, 3],
  ]);
  expect([outcomesOf(out('dark', 'below'), true), outcomesOf(out('near', 'untold'), true), outcomesOf(out('untold', 'above'), true)]).toEqual([
    [6],
    [1, 2],
    [1, 3, 5],
  ]);
});

describe('before the first hold', () => {
  const scale = { min: steps(-8), max: steps(8), step: 1 };
  const { model } = openBelief(scale, false, NO_MEMORY);

  test('the centre is as likely as a bell about the middle of the scale, 0.4 of half of it wide', () => {
    const bell = plainBell(scale);
    // 0.4 of 8 is 3.2.
    expect(bell(3.2) / bell(0)).toBeCloseTo(Math.exp(-0.5), 9);
    expect(plainBell(scale, 2)(6.4) / plainBell(scale, 2)(0)).toBeCloseTo(Math.exp(-0.5), 9);
    const aside = plainBell({ min: steps(0), max: steps(20), step: 2 });
    // Half of ten steps is five: 0.4 of it, two steps of two.
    expect(aside(14) / aside(10)).toBeCloseTo(Math.exp(-0.5), 9);
    expect(aside(6)).toBeCloseTo(aside(14), 12);
  });

  test('half the width follows a log-normal about a fifth of half the scale', () => {
    const weights = widthWeights(model, NO_MEMORY);
    const of = (half: number): number => weights[model.halfWidth.indexOf(half)]!;
    const curve = (x: number, median: number, sd: number): number => Math.exp(-0.5 * (Math.log(x / median) / sd) ** 2) / x;
    expect(of(3) / of(1.5)).toBeCloseTo(curve(3, 1.6, 0.6) / curve(1.5, 1.6, 0.6), 9);
    expect(sum(weights)).toBeCloseTo(1, 9);
  });

  test('remembered centres that count for nothing leave the prior as it is without them', () => {
    const memory = { ...NO_MEMORY, centres: [{ centre: 5, sd: 0.5, weight: 0 }] };
    expect(priorWeights(model, memory)).toEqual(priorWeights(model, NO_MEMORY));
  });

  test('what is remembered counts four fifths', () => {
    const memory = { ...NO_MEMORY, halfWidth: { median: 4, logSd: 0.2 }, centres: [{ centre: 5, sd: 0.5, weight: 3 }, { centre: -5, sd: 0.5, weight: 1 }] }; // prettier-ignore
    const [plain, known] = [widthWeights(model, NO_MEMORY), widthWeights(model, memory)];
    const narrow = model.halfWidth.indexOf(0.5);
    expect(known[narrow]! / plain[narrow]!).toBeCloseTo(0.2, 6);
    expect(sum(known)).toBeCloseTo(1, 9);
    // Of one width, the share of each centre by what remembers it.
    const weights = priorWeights(model, { ...memory, halfWidth: null });
    const widths = widthWeights(model, NO_MEMORY);
    const near = (from: number, to: number): number =>
      sum(weights.map((weight, h) => (model.centre[h]! >= from && model.centre[h]! <= to ? weight / widths[h]! : 0)));
    const whole = near(-20, 20);
    // Within four deviations, with what the plain bell gives there.
    const bell = (from: number, to: number): number => {
      const all = model.centre.map(plainBell(scale));
      return sum(all.filter((_, h) => model.centre[h]! >= from && model.centre[h]! <= to)) / sum(all);
    };
    expect(near(3, 7) / whole).toBeCloseTo(0.2 * bell(3, 7) + 0.8 * 0.75, 3);
    expect(near(-7, -3) / whole).toBeCloseTo(0.2 * bell(-7, -3) + 0.8 * 0.25, 3);
  });

  test('a lamp that was seen counts four fifths', () => {
    expect(lampShares(model, NO_MEMORY)).toBe(model.lampShares);
    const lamp = [{ outside: 0.2, light: 'flicker' }] as const;
    const after = afterSightings(lamp);
    expect([...lampShares(model, { lamp: [...lamp] })]).toEqual(LAMPS.map(({ share }, at) => expect.closeTo(share * (0.2 + 0.8 * after[at]!), 9)));
  });
});

describe('a scale', () => {
  const even = { min: steps(-6), max: steps(6), step: 3 };
  test('has its values, its middle steps and its neighbours', () => {
    expect(valuesOf(even)).toEqual([-6, -3, 0, 3, 6]);
    expect([halfRange(even), isOnScale(even, 3), isOnScale(even, 2), isOnScale(even, 9), isOnScale(even, -6), isOnScale(even, -9), isOnScale(even, 6)]).toEqual(
      [2, true, false, false, true, false, true],
    );
    expect([neighbour(even, steps(3), 1), neighbour(even, steps(6), 1), neighbour(even, steps(-6), -1), neighbour(even, steps(0), -1)]).toEqual([
      6,
      null,
      null,
      -3,
    ]);
  });

  test('has a value nearest to any number, and within half a step of itself', () => {
    expect([nearestOn(even, 1.4), nearestOn(even, 1.6), nearestOn(even, 99), nearestOn(even, -99)]).toEqual([0, 3, 6, -6]);
    expect([nearestWithin(even, 7.5), nearestWithin(even, 7.6), nearestWithin(even, -7.5), nearestWithin(even, -7.6)]).toEqual([6, null, -6, null]);
    expect([writeSteps(0), writeSteps(3), writeSteps(-3)]).toEqual(['0', '+3', '\u22123']);
  });
});
