// Contract of the confidence: belief within one step of a value, an edge exactly one step away half inside; the surest value is the lowest
// of those with most.
import { expect, test } from 'vitest';
import { surestOf } from '../../../src/sweep/end/confidence.ts';

const surest = (centres: readonly number[], weights: readonly number[], places = 5) => surestOf(Float64Array.from(centres), Float64Array.from(weights), places);

test.each([
  ['a centre on a value: half of it lies a step away', [2], [1], { index: 2, within: 1 }],
  ['one between two values lies wholly within a step of both', [2.5], [1], { index: 2, within: 1 }],
  ['two a step apart: each with half of the other', [1, 2], [0.4, 0.6], { index: 2, within: 0.8 }],
  ['two steps apart: the one between has half of both', [1, 3], [0.5, 0.5], { index: 1, within: 0.5 }],
  ['off the lower end, up to a step', [-0.5], [1], { index: 0, within: 1 }],
  ['a whole step off the lower end, half', [-1], [1], { index: 0, within: 0.5 }],
  ['off the upper end', [4.5], [1], { index: 4, within: 1 }],
  ['a whole step off the upper end', [5], [1], { index: 4, within: 0.5 }],
  ['further off, nothing', [-1.5, 5.5], [1, 1], { index: 0, within: 0 }],
  ['of weights that sum to no more than they do', [0, 4], [2, 3], { index: 4, within: 3 }],
])('%s', (_, centres, weights, found) => {
  expect(surest(centres, weights)).toEqual(found);
});

test('next to nothing more is no more', () => {
  expect(surest([0, 4], [1, 1 + 1e-13]).index).toBe(0);
  expect(surest([0, 4], [1, 1 + 1e-11]).index).toBe(4);
});
