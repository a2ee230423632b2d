import { expect, test } from 'vitest';
import { openBelief } from '../../../src/sweep/belief/belief.ts';
import { NO_MEMORY } from '../../../src/sweep/belief/prior.ts';
import { driftOf, STRONG } from '../../../src/sweep/end/drift.ts';
import { read } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';
import { noiseFreeLight } from '../noiseFree.ts';

const belief = openBelief({ min: steps(-10), max: steps(10), step: 1 }, false, NO_MEMORY);
const holdsOf = (band: readonly [number, number], ...values: readonly number[]) =>
  values.map((value) => ({ value: steps(value), reading: read(noiseFreeLight(...band, value), 'absent') }));

test('holds that one band explains give no sign of drift', () => {
  const drift = driftOf(belief, holdsOf([-2, 4], 0, 6, -6, 5, -3, 4, -2), 0);
  expect(drift?.bayesFactor).toBeLessThan(1);
});

test('holds that only two bands explain give strong evidence, and say since when', () => {
  const moved = [...holdsOf([2, 7], 0, 4, 8, 2, 7), ...holdsOf([-7, -3], 4, 7, -3, -7, -8)];
  const drift = driftOf(belief, moved, 0);
  expect(drift?.bayesFactor).toBeGreaterThan(STRONG);
  expect(drift?.afterHold).toBe(5);
});

test('what was said to be unmoved is not doubted again', () => {
  const moved = [...holdsOf([2, 7], 0, 4, 8, 2, 7), ...holdsOf([-7, -3], 4, 7, -3)];
  expect(driftOf(belief, moved, moved.length)).toBeNull();
});

test('too few holds tell no story', () => {
  expect(driftOf(belief, holdsOf([0, 4], 0, 3, 5), 0)).toBeNull();
});
