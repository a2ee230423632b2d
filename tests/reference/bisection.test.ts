// The same engine as probabilistic bisection of the unit interval with an oracle that is right four times in five.
// Source: Waeber, Frazier & Henderson, SIAM J. Control Optim. 51:2261-2279 (2013): the density is multiplied by 2p on the
// side the oracle points to and by 2(1-p) on the other, and the next query is the median. Numbers derived from it.
import { expect, test } from 'vitest';
import { observe, startFrom, type Experiment, type Posterior } from '../../src/sweep/belief/grid.ts';

const CELLS = 1600;
const RIGHT_OFTEN = 0.8;
const TO_THE_RIGHT = 1;
const TO_THE_LEFT = 0;

/** Hypothesis k: the root lies in cell k. Stimulus s: is the root right of s / CELLS? */
const oracle: Experiment = {
  hypotheses: CELLS,
  stimuli: CELLS + 1,
  outcomes: 2,
  likelihoods(stimulus, which, into) {
    which.forEach((cell, k) => {
      const right = cell >= stimulus ? RIGHT_OFTEN : 1 - RIGHT_OFTEN;
      into[TO_THE_RIGHT * which.length + k] = right;
      into[TO_THE_LEFT * which.length + k] = 1 - right;
    });
  },
};

function median({ mass }: Posterior): number {
  let below = 0;
  for (let k = 0; k < mass.length; k++) {
    if (below + mass[k]! >= 0.5) return (k + (0.5 - below) / mass[k]!) / CELLS;
    below += mass[k]!;
  }
  return 1;
}

const opening = startFrom(new Float64Array(CELLS).fill(1));
const afterRight = observe(oracle, opening, CELLS / 2, [TO_THE_RIGHT]).posterior;

test('an answer "right" at one half leaves densities of 0.4 and 1.6', () => {
  expect(afterRight.mass[0]! * CELLS).toBeCloseTo(0.4, 9);
  expect(afterRight.mass[CELLS - 1]! * CELLS).toBeCloseTo(1.6, 9);
});

test('the next query after it is at 0.6875', () => {
  expect(median(afterRight)).toBeCloseTo(0.6875, 9);
});

test('an answer "left" there moves the query to 0.570312', () => {
  const afterLeft = observe(oracle, afterRight, Math.round(median(afterRight) * CELLS), [TO_THE_LEFT]).posterior;
  expect(median(afterLeft)).toBeCloseTo(0.570312, 6);
});
