import { expect, test } from 'vitest';
import { openBelief, weigh } from '../../../src/sweep/belief/belief.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import { driftOf, STRONG } from '../../../src/sweep/end/drift.ts';
import { read } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';
import { noiseFreeLight } from '../noiseFree.ts';

const belief = openBelief({ min: steps(-10), max: steps(10), step: 1 }, false, NO_MEMORY);
/** Holds of one band after another, each with the chance the belief gave to it. */
function holdsOf(...series: readonly (readonly [readonly [number, number], ...number[]])[]) {
  let now = belief;
  return series.flatMap(([band, ...values]) =>
    values.map((value) => {
      const reading = read(noiseFreeLight(...band, value), 'absent');
      const step = weigh(now, steps(value), reading);
      now = step.belief;
      return { value: steps(value), reading, predictive: step.predictive };
    }),
  );
}

const moved = holdsOf([[2, 7], 0, 4, 8, 2, 7], [[-7, -3], 4, 7, -3, -7, -8]);

test('holds that one band explains give no sign of drift', () => {
  expect(driftOf(belief, holdsOf([[-2, 4], 0, 6, -6, 5, -3, 4, -2]), 0)?.bayesFactor ?? 0).toBeLessThan(1);
});

test('holds that only a shifted band explains give strong evidence, and say since when', () => {
  const drift = driftOf(belief, moved, 0);
  expect(drift?.bayesFactor).toBeGreaterThan(STRONG);
  expect(drift?.afterHold).toBe(5);
});

test('what was said to be unmoved is not doubted again', () => {
  expect(driftOf(belief, moved, moved.length)).toBeNull();
});

test('too few holds tell no story', () => {
  expect(driftOf(belief, holdsOf([[0, 4], 0, 3, 5]), 0)).toBeNull();
});

test('a band that moved up is told as surely as one that moved down as far', () => {
  const factor = (sign: 1 | -1) => {
    const band = (low: number, high: number): [number, number] => (sign > 0 ? [low, high] : [-high, -low]);
    const values = (...all: readonly number[]) => all.map((value) => sign * value);
    return driftOf(belief, holdsOf([band(1, 5), ...values(0, 3, 6, 1, 5)], [band(3, 7), ...values(1, 7, 2, 3, 6)]), 0)?.bayesFactor;
  };
  expect(factor(1)).toBeGreaterThan(1);
  expect(factor(-1)).toBeCloseTo(factor(1) ?? NaN, 6);
});
