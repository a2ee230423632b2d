// The same engine as a sequential test between two simple hypotheses: does this value hold eight times in ten, or two?
// Source: A. Wald, Sequential Analysis (1947): stop at ln((1-beta)/alpha) and ln(beta/(1-alpha)); the error and the mean
// number of trials follow from the gambler's ruin. From memory, derived.
import { expect, test } from 'vitest';
import { observe, startFrom, type Experiment, type Posterior } from '../../src/sweep/belief/grid.ts';

const STEADY = 0.8;
const ERROR = 0.05;
const upper = Math.log((1 - ERROR) / ERROR);
const lower = Math.log(ERROR / (1 - ERROR));

/** Hypothesis 0: holds eight times in ten; hypothesis 1: two in ten. Outcome 1: it held. */
const light: Experiment = {
  hypotheses: 2,
  stimuli: 1,
  outcomes: 2,
  likelihoods(_, which, into) {
    which.forEach((hypothesis, k) => {
      const held = hypothesis === 0 ? STEADY : 1 - STEADY;
      into[which.length + k] = held;
      into[k] = 1 - held;
    });
  },
};

const even = startFrom(Float64Array.of(1, 1));
const odds = ({ mass }: Posterior): number => Math.log(mass[0]! / mass[1]!);
const after = (...held: number[]): number => odds(held.reduce((p, outcome) => observe(light, p, 0, [outcome]).posterior, even));

test("Wald's boundaries at alpha 0.05 and beta 0.10 are -2.2513 and 2.8904", () => {
  expect(Math.log(0.1 / 0.95)).toBeCloseTo(-2.2513, 4);
  expect(Math.log(0.9 / 0.05)).toBeCloseTo(2.8904, 4);
});

test('one steady hold is worth ln 4, and a failed one takes it back', () => {
  expect(after(1)).toBeCloseTo(1.3863, 4);
  expect(after(1, 0)).toBeCloseTo(0, 9);
});

test('three more steady holds than failed ones cross the boundary ln 19, two do not', () => {
  expect(upper).toBeCloseTo(2.9444, 4);
  expect(after(1, 1)).toBeLessThan(upper);
  expect(after(1, 1, 1)).toBeGreaterThan(upper);
});

test('a value that holds eight times in ten is judged rightly in 0.98462 of tests, after 4.846 holds on average', () => {
  let walking = new Map<string, { posterior: Posterior; chance: number }>([['0.0000', { posterior: even, chance: 1 }]]);
  let right = 0;
  let trials = 0;
  for (let trial = 1; trial <= 400; trial++) {
    const next = new Map<string, { posterior: Posterior; chance: number }>();
    for (const { posterior, chance } of walking.values()) {
      for (const outcome of [0, 1]) {
        const moved = observe(light, posterior, 0, [outcome]).posterior;
        const reached = chance * (outcome === 1 ? STEADY : 1 - STEADY);
        const at = odds(moved);
        if (at > upper || at < lower) {
          trials += trial * reached;
          if (at > upper) right += reached;
          continue;
        }
        const key = at.toFixed(4);
        next.set(key, { posterior: moved, chance: (next.get(key)?.chance ?? 0) + reached });
      }
    }
    walking = next;
  }
  expect(right).toBeCloseTo(0.98462, 5);
  expect(trials).toBeCloseTo(4.846, 3);
});
