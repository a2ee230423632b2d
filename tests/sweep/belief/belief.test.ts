import fc from 'fast-check';
import { expect, test } from 'vitest';
import { centreInterval, centreOf, centreProfile, chancesOfIn, fewOf, openBelief, weigh, type Belief } from '../../../src/sweep/belief/belief.ts';
import { outcomeCount, outcomesOf } from '../../../src/sweep/belief/observation.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import type { Scale } from '../../../src/sweep/scale.ts';
import type { Reading } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';

const scale: Scale = { min: steps(-8), max: steps(8), step: 1 };
const IN: Reading = { counts: 'in' };
const out = (grade: 'near' | 'flicker' | 'dark' | 'untold', side: 'above' | 'below' | 'untold' = 'untold'): Reading => ({
  counts: 'out',
  grade,
  side,
});
const anyReading = fc.oneof(
  fc.constant(IN),
  fc.tuple(fc.constantFrom('near', 'flicker', 'dark', 'untold'), fc.constantFrom('above', 'below', 'untold')).map(([grade, side]) => out(grade, side)),
);
const plain = openBelief(scale, false, NO_MEMORY);
const withArrows = openBelief(scale, true, NO_MEMORY);
const after = (belief: Belief, ...holds: readonly (readonly [number, Reading])[]): Belief =>
  holds.reduce((before, [value, reading]) => weigh(before, steps(value), reading).belief, belief);

test.each([false, true])('every band gives every outcome a chance, and they sum to one (arrows: %s)', (arrows) => {
  const belief = arrows ? withArrows : plain;
  const { model } = belief;
  const few = fewOf(belief, 200);
  const n = few.which.length;
  const predict = model.predicting(few);
  const rows = new Float64Array(model.outcomes * n);
  for (let stimulus = 0; stimulus < model.stimuli; stimulus++) {
    predict(stimulus, rows);
    few.which.forEach((_, k) => {
      const chances = Array.from({ length: outcomeCount(arrows) }, (_unused, outcome) => rows[outcome * n + k]!);
      expect(Math.min(...chances)).toBeGreaterThan(0);
      expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
    });
  }
});

test.each([false, true])('the two parts of the light, kept apart, give each reading the chance that their product gives (arrows: %s)', (arrows) => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.integer({ min: -1, max: 1 }), anyReading), { minLength: 1, maxLength: 4 }), (holds) => {
      const short: Scale = { min: steps(-1), max: steps(1), step: 1 };
      const opening = openBelief(short, arrows, NO_MEMORY);
      const { model } = opening;
      let belief = opening;
      let product = 1;
      for (const [value, reading] of holds) {
        const step = weigh(belief, steps(value), reading);
        belief = step.belief;
        product *= step.predictive;
      }
      // Brute force: every band with every pair of kinds.
      const { which, mass } = opening.posterior;
      let whole = 0;
      for (let edge = 0; edge < model.edgeKinds; edge++) {
        for (let lamp = 0; lamp < model.lampKinds; lamp++) {
          const weights = mass.map((chance) => chance * model.edgeShares[edge]! * model.lampShares[lamp]!);
          for (const [value, reading] of holds) {
            const ofOne = (kinds: number, kind: number) => Float64Array.from({ length: which.length * kinds }, (_, at) => Number(at % kinds === kind));
            const lights = { which, edges: ofOne(model.edgeKinds, edge), lamp: ofOne(model.lampKinds, lamp) };
            model.weigh(value - short.min, outcomesOf(reading, arrows), lights);
            weights.forEach((weight, k) => (weights[k] = weight * lights.edges[k * model.edgeKinds + edge]! * lights.lamp[k * model.lampKinds + lamp]!));
          }
          whole += weights.reduce((sum, weight) => sum + weight, 0);
        }
      }
      expect(Math.log(product)).toBeCloseTo(Math.log(whole), 3);
    }),
    { numRuns: 3 },
  );
});

test('what a light does near the band and farther out is learnt from the sweep', () => {
  const flickering = after(plain, [0, IN], [3, IN], [4, out('flicker')], [-3, out('flicker')], [-4, out('flicker')], [4, out('flicker')]);
  const late = after(plain, [0, IN], [3, IN], [4, out('near')], [-3, out('near')], [-4, out('near')], [4, out('near')]);
  expect(chanceOf(flickering, 5, out('near'))).toBeLessThan(chanceOf(late, 5, out('near')) / 2);
});

test('a body that was seen to flicker near the band is expected to, and may still be late', () => {
  const lamp = Array.from({ length: 8 }, () => ({ outside: 0.5, light: 'flicker' }) as const);
  const known = openBelief(scale, false, { ...NO_MEMORY, lamp });
  const holds = [
    [0, IN],
    [3, IN],
    [4, IN],
  ] as const;
  const [asKnown, asNew] = [after(known, ...holds), after(plain, ...holds)];
  expect(chanceOf(asKnown, 5, out('flicker'))).toBeGreaterThan(1.5 * chanceOf(asNew, 5, out('flicker')));
  expect(chanceOf(asKnown, 5, out('near'))).toBeGreaterThan(0.15 * chanceOf(asNew, 5, out('near')));
  expect(known.posterior.lamp.subarray(0, known.model.lampKinds).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
});

const chanceOf = (belief: Belief, value: number, reading: Reading): number => weigh(belief, steps(value), reading).predictive;

test('the plain belief is centred on the scale and as wide as the prior says', () => {
  const { mean, sd } = centreOf(plain);
  expect(mean).toBeCloseTo(0, 6);
  expect(sd).toBeGreaterThan(2.5);
  expect(sd).toBeLessThan(3.5);
});

test('the belief does not depend on the order of the holds', () => {
  const holds = [
    [0, out('dark')],
    [5, IN],
    [8, out('near')],
  ] as const;
  const forward = centreOf(after(plain, ...holds));
  const backward = centreOf(after(plain, ...holds.toReversed()));
  expect(forward.mean).toBeCloseTo(backward.mean, 2);
  expect(forward.sd).toBeCloseTo(backward.sd, 2);
});

test('a dark light says more of the distance than a late one', () => {
  const near = after(plain, [0, out('near')], [8, out('dark')]);
  const far = after(plain, [0, out('dark')], [8, out('near')]);
  expect(centreOf(near).mean).toBeLessThan(-0.5);
  expect(centreOf(far).mean).toBeGreaterThan(0.5);
});

test('an arrow sends the belief to its side', () => {
  expect(centreOf(after(withArrows, [0, out('untold', 'above')])).mean).toBeGreaterThan(1.5);
  expect(centreOf(after(withArrows, [0, out('untold', 'below')])).mean).toBeLessThan(-1.5);
});

test('a wrong memory is overruled in a few holds', () => {
  const misled = openBelief(scale, false, { centres: [{ centre: -6, sd: 1.5, weight: 1 }], halfWidth: null });
  expect(centreOf(misled).mean).toBeLessThan(-3);
  const corrected = after(misled, [-6, out('dark')], [3, IN], [-1, out('flicker')], [7, out('near')]);
  expect(Math.abs(centreOf(corrected).mean - 3)).toBeLessThan(1);
});

test('a width remembered wrong is overruled in a few holds', () => {
  const misled = openBelief(scale, false, { centres: [], halfWidth: { median: 1.5, logSd: 0.1 } });
  const corrected = after(misled, [0, IN], [5, IN], [6, out('near')], [-5, IN], [-6, out('near')]);
  const chances = chancesOfIn(corrected);
  expect(chances[3]).toBeGreaterThan(0.5);
  expect(chances[13]).toBeGreaterThan(0.5);
});

test('a mirrored sweep gives a mirrored belief', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: -8, max: 8 }), fc.constantFrom(IN, out('near'), out('flicker'), out('dark'))), { maxLength: 6 }),
      (holds) => {
        const mirrored = holds.map(([value, reading]) => [-value, reading] as const);
        expect(centreOf(after(plain, ...holds)).mean).toBeCloseTo(-centreOf(after(plain, ...mirrored)).mean, 4);
      },
    ),
    { numRuns: 40 },
  );
});

test('the profile of the centre is a probability, and the interval lies within it', () => {
  const belief = after(plain, [0, IN], [4, out('near')]);
  const profile = centreProfile(belief);
  expect(profile.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
  const { from, to } = centreInterval(belief);
  const inside = profile.filter(({ at }) => at >= from && at <= to).reduce((sum, { chance }) => sum + chance, 0);
  expect(inside).toBeGreaterThanOrEqual(0.95);
  expect(from).toBeLessThan(to);
});

test('the stand-in of a belief keeps its mean and spread', () => {
  const few: Belief = { ...plain, posterior: fewOf(plain, 700) };
  expect(few.posterior.which.length).toBeLessThanOrEqual(700);
  expect(centreOf(few).mean).toBeCloseTo(0, 1);
  expect(centreOf(few).sd).toBeCloseTo(centreOf(plain).sd, 1);
});

test('P(in) falls on both sides of a band that was seen', () => {
  const chances = chancesOfIn(after(plain, [0, IN], [1, IN], [-1, IN], [4, out('near')], [-4, out('near')]));
  expect(chances[8]).toBeGreaterThan(0.9);
  expect(chances[0]).toBeLessThan(0.1);
  expect(chances[16]).toBeLessThan(0.1);
});

test.each([false, true])('the shares of the kinds sum to one before the first hold (arrows: %s)', (arrows) => {
  const { model } = arrows ? withArrows : plain;
  const sum = (shares: Float64Array): number => shares.reduce((total, share) => total + share, 0);
  for (const shares of [model.edgeShares, model.lampShares, model.evenEdges, model.evenLamps]) expect(sum(shares)).toBeCloseTo(1, 9);
});

test('bands are laid from half a step to the whole grid, which reaches 0.3 of half the scale past both limits', () => {
  const { model } = plain;
  // Half of 16 is 8, of which 0.3 is 2.4, and so 3: from -11 to 11 in halves, 45 places, taken two at a time.
  expect(model.hypotheses).toBe((45 * 44) / 2);
  expect([Math.min(...model.low), Math.max(...model.high)]).toEqual([-11, 11]);
  const at = model.low.findIndex((low, index) => low === -2.5 && model.high[index] === 4);
  expect([model.centre[at], model.halfWidth[at], model.width[at], model.isBetween(at)]).toEqual([0.75, 3.25, 13, false]);
  const between = model.low.findIndex((low, index) => low === -2.5 && model.high[index] === 3.5);
  expect(model.isBetween(between)).toBe(true);
});
