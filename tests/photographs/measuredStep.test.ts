import { expect, test } from 'vitest';
import { measuredStep } from '../../src/photographs/measuredStep.ts';
import type { Proof } from '../../src/photographs/proof.ts';
import { around } from '../../src/photographs/withInterval.ts';

const bracket = (step: ReturnType<typeof around>): Proof => ({
  is: 'bracket',
  taken: null,
  shots: [],
  reference: null,
  step,
  centre: around(0, 1),
  scatter: 1,
  atZero: 0,
  joined: null,
});
const one: Proof = { is: 'one', taken: null, error: around(0, 1), depth: { front: 1, behind: 1 }, sharp: 'sharp' };

test('the newest bracket says what a step is worth, whatever else was kept since', () => {
  expect(measuredStep([bracket(around(4, 1)), bracket(around(5, 1)), one])).toEqual(around(5, 1));
});

test('without a bracket nothing is measured, nor by one in which a step may be worth nothing', () => {
  expect(measuredStep([one])).toBeNull();
  expect(measuredStep([bracket(around(4, 1)), bracket(around(1, 2))])).toBeNull();
});
