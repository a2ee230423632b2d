import { expect, test } from 'vitest';
import { openBelief, weigh } from '../../../src/sweep/belief/belief.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import { STRONG } from '../../../src/sweep/end/drift.ts';
import { stillnessOf } from '../../../src/sweep/end/stillness.ts';
import { read } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';
import { noiseFreeLight } from '../noiseFree.ts';

const belief = openBelief({ min: steps(-10), max: steps(10), step: 1 }, false, NO_MEMORY);

function holdsOf(...series: readonly (readonly [readonly [number, number], ...number[]])[]) {
  return series.flatMap(([band, ...values]) =>
    values.map((value) => {
      const reading = read(noiseFreeLight(...band, value), 'absent');
      return { value: steps(value), reading, predictive: weigh(belief, steps(value), reading).predictive };
    }),
  );
}

/** Every end is told by holds made before the holds that follow could tell of a shift. */
const untested = holdsOf([[-3, 3], 0, 8, -8, -3, -4, 3, 4, 0, 9]);

test('ends that were never tried again leave room for a hidden shift, and a value to try is named', () => {
  const { odds, test: value } = stillnessOf(belief, untested, 0, 0);
  expect(odds).toBeGreaterThan(0.15);
  expect(value).not.toBeNull();
});

test('the value that is named settles it when it is held again and holds as before', () => {
  const { odds, test: value } = stillnessOf(belief, untested, 0, 0);
  const once = [...untested, ...holdsOf([[-3, 3], value ?? 0])];
  expect(stillnessOf(belief, once, 0, 0).odds).toBeLessThan(odds / 2);
});

test('holds that contradict the early ones are strong evidence of harm, and say since when', () => {
  const moved = stillnessOf(belief, [...untested.slice(0, 7), ...holdsOf([[0, 6], -3, 4, 5, -2])], 0, 0);
  expect(moved.odds).toBeGreaterThan(STRONG);
  expect(moved.afterHold).toBe(7);
});

test('what was said to be unmoved is not doubted again, and too few holds tell nothing', () => {
  expect(stillnessOf(belief, untested, untested.length, 0)).toEqual({ odds: 0, afterHold: 0, test: null });
  expect(stillnessOf(belief, untested.slice(0, 3), 0, 0).test).toBeNull();
});
