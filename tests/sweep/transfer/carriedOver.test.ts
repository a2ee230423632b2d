// The taught rule of the width transfer (common practice, no source): the centre of a band that runs past a limit is its
// visible end, and half the width measured with the focus set aside inwards from it.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CarriedOutcome, Outcome } from '../../../src/sweep/end/outcome.ts';
import { openSweep } from '../../../src/sweep/opening.ts';
import type { Scale } from '../../../src/sweep/scale.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import { transferPlan } from '../../../src/sweep/transfer/opened.ts';
import { weigh } from '../../../src/sweep/belief/belief.ts';
import { carriedOver } from '../../../src/sweep/transfer/carried.ts';
import { asideOpening } from '../../../src/sweep/transfer/joint.ts';
import type { Transfer } from '../../../src/sweep/widthTransfer.ts';
import { read } from '../../../src/sweep/verdict.ts';
import { seconds, steps } from '../../../src/units.ts';
import { noiseFreeLight, ranWith } from '../noiseFree.ts';
import { after, later, opened } from '../staged.ts';

const SCALE: Scale = { min: steps(-10), max: steps(10), step: 1 };
type Band = readonly [number, number];

const outcomeIn = ({ phase }: SweepState): Outcome => {
  if (phase.name !== 'offered') throw new Error(`in ${phase.name}`);
  return phase.outcome;
};

/** The first series with this band, the second with that one. */
function transferred(first: Band, aside: Band): { before: Outcome; outcome: Outcome } {
  const swept = ranWith(openSweep(opened({ scale: SCALE, arrows: 'absent' })).state, ...first);
  const before = outcomeIn(swept);
  const plan = transferPlan(swept, before);
  if (!plan) throw new Error('nothing to carry over');
  const turned = after(openSweep(opened(plan)).state, { did: 'checked', at: later(1), focus: 'moved', by: 'key' });
  return { before, outcome: outcomeIn(ranWith(turned, ...aside)) };
}

function carried(first: Band, aside: Band): CarriedOutcome {
  const { outcome } = transferred(first, aside);
  if (outcome.found !== 'carried over') throw new Error(`found ${outcome.found}`);
  return outcome;
}

/** A band that runs past the upper limit, and the same width somewhere inside the scale. */
const pastAndAside = fc.tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 11, max: 17 })).chain(([low, high]) =>
  fc.integer({ min: -9, max: 9 - (high - low) }).map((at): { first: Band; aside: Band } => ({
    first: [low, high],
    aside: [at, at + high - low],
  })),
);

test('the centre is the visible end and half the width, exactly, for any band whose light never wavers', () => {
  fc.assert(
    fc.property(pastAndAside, ({ first, aside }) => {
      const centre = (first[0] + first[1]) / 2;
      const outcome = carried(first, aside);
      expect(outcome).toMatchObject({ side: 'high', visible: first[0], ends: 'seen', aside: { low: aside[0], high: aside[1] }, centre });
      expect(outcome.halfWidth).toBe((first[1] - first[0] + 1) / 2);
      expect(outcome.interval.from).toBeLessThanOrEqual(centre);
      expect(outcome.interval.to).toBeGreaterThanOrEqual(centre);
      expect(Math.abs(outcome.chosen - Math.min(10, centre))).toBeLessThanOrEqual(0.5);
      expect(outcome).toMatchObject({ inside: true, service: centre > 10 });
    }),
    { numRuns: 12, examples: [[{ first: [4, 12], aside: [-4, 4] }], [{ first: [8, 17], aside: [-9, 0] }]] },
  );
}, 60_000);

test('past the lower limit everything is mirrored', () => {
  const lit = (low: number, high: number, values: readonly number[]) =>
    values.map((value) => ({ value: steps(value), verdict: noiseFreeLight(low, high, value) }));
  const first = lit(5, 13, [0, 8, 10, 5, 4, 10]);
  const second = lit(-6, 2, [0, -8, -6, -7, 5, 2, 3]);
  const turnedOver = (holds: typeof first) => holds.map(({ value, verdict }) => ({ value: steps(-value), verdict }));
  const up = weighed({ of: 'a', side: 'high', visible: steps(5), holds: first }, second);
  const down = weighed({ of: 'a', side: 'low', visible: steps(-5), holds: turnedOver(first) }, turnedOver(second));
  expect(up).toMatchObject({ centre: 9, chosen: 9, halfWidth: 4.5, aside: { low: -6, high: 2 } });
  expect(down).toMatchObject({ centre: -9, chosen: -9, halfWidth: 4.5, aside: { low: -2, high: 6 }, inside: true, service: false });
  expect(down.within).toBeCloseTo(up.within, 9);
  expect(down.halfInterval.from).toBeCloseTo(up.halfInterval.from, 9);
  // A tail of the grid's own width may fall to either side.
  expect(Math.abs(down.interval.from + up.interval.to)).toBeLessThanOrEqual(0.25);
  expect(Math.abs(down.interval.to + up.interval.from)).toBeLessThanOrEqual(0.25);
});

/** What these holds come to, without a sweep around them. */
function weighed(transfer: Transfer, second: Transfer['holds']): CarriedOutcome {
  const plan = { ...opened({ scale: SCALE, arrows: 'absent' }).plan, transfer };
  const readings = second.map(({ value, verdict }) => ({ value, reading: read(verdict, plan.arrows) }));
  const aside = readings.reduce((belief, { value, reading }) => weigh(belief, value, reading).belief, asideOpening(plan));
  const held = readings.map(({ value, reading }) => ({ value, counts: reading.counts }));
  const outcome = carriedOver(plan, aside, held, { holds: second.length, seconds: seconds(60) });
  if (outcome.found !== 'carried over') throw new Error(`found ${outcome.found}`);
  return outcome;
}

test('a centre that the scale still has is to be entered, one past it needs service', () => {
  expect(carried([6, 12], [-3, 3])).toMatchObject({ centre: 9, chosen: 9, service: false });
  expect(carried([6, 16], [-5, 5])).toMatchObject({ centre: 11, chosen: 10, inside: true, service: true });
});

test('a band that never lit at critical focus has no visible end, a wide interval with the truth in it, and needs service', () => {
  const { before, outcome } = transferred([12, 18], [-3, 3]);
  expect(before).toMatchObject({ found: 'beyond the scale', side: 'above' });
  expect(outcome).toMatchObject({ found: 'carried over', visible: null, chosen: 10, inside: false, service: true });
  if (outcome.found !== 'carried over') return;
  expect(outcome.interval.from).toBeLessThanOrEqual(15);
  expect(outcome.interval.to).toBeGreaterThanOrEqual(15);
  expect(outcome.interval.to - outcome.interval.from).toBeGreaterThanOrEqual(2);
});

test('a first series that ended before its visible end was held from both sides gives no exact end', () => {
  const lit = (low: number, high: number, values: readonly number[]) =>
    values.map((value) => ({ value: steps(value), verdict: noiseFreeLight(low, high, value) }));
  const second = lit(-6, 2, [0, -8, -6, -7, 5, 2, 3]);
  const early = weighed({ of: 'a', side: 'high', visible: steps(6), holds: lit(5, 13, [0, 8, 10, 10, 6]) }, second);
  expect(early.interval.from).toBeLessThan(9);
  expect(early.interval.to).toBeGreaterThan(9);
  expect(early.centre).not.toBe(10);
});

test('a second series that ends before its light came on leaves what was known', () => {
  const swept = ranWith(openSweep(opened({ scale: SCALE, arrows: 'absent' })).state, 5, 13);
  const plan = transferPlan(swept, outcomeIn(swept));
  if (!plan) throw new Error('nothing to carry over');
  const { phase } = after(openSweep(opened(plan)).state, { did: 'finished', at: later(9), by: 'key' });
  expect(phase).toMatchObject({ outcome: { found: 'past the limit', side: 'high', visible: 5, bound: 7.5, tally: { holds: 0 } } });
});

test('there is nothing to carry over where the band is known, where every value holds, or from a transfer itself', () => {
  const known = ranWith(openSweep(opened({ scale: SCALE, arrows: 'absent' })).state, -2, 3);
  expect(transferPlan(known, outcomeIn(known))).toBe(null);
  const all = ranWith(openSweep(opened({ scale: SCALE, arrows: 'absent' })).state, -30, 30);
  expect(transferPlan(all, outcomeIn(all))).toBe(null);
  const past = ranWith(openSweep(opened({ scale: SCALE, arrows: 'absent' })).state, 5, 13);
  const plan = transferPlan(past, outcomeIn(past));
  expect(plan && transferPlan({ ...past, plan }, outcomeIn(past))).toBe(null);
});

test('the second series wants both ends even where the first was quick, and is not told where the first one lay', () => {
  const quick = opened({ scale: SCALE, arrows: 'absent' }).plan.manner;
  const swept = ranWith(openSweep(opened({ scale: SCALE, arrows: 'absent', manner: { ...quick, care: 'quick' } })).state, 4, 14);
  expect(transferPlan(swept, outcomeIn(swept))).toMatchObject({ manner: { care: 'standard' }, memory: { centres: [] }, transfer: { of: 'sweep-1' } });
});
