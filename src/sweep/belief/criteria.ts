// One step of look-ahead on a grid: for every stimulus, what the posterior would be worth on average after one more
// trial. Three ways to value a posterior: its entropy (Watson 2017, J. Vision 17(3):10, eq. 11–13), the variance of a
// quantity of interest, and the logarithm of that variance, which keeps one bad outcome from hiding many good ones.
import type { Experiment, Posterior } from './grid.ts';

/** What one more trial at a stimulus promises: the chance of each outcome and the mean score after it. */
export interface Prospect {
  readonly stimulus: number;
  readonly chances: readonly number[];
  readonly expected: number;
}

/** Values a posterior given as joint weights that sum to `chance`, and returns the value times `chance`. */
export type Score = (joint: Float64Array, chance: number) => number;

/** The mean score after one trial at each stimulus of the experiment. */
export function lookAhead(experiment: Experiment, posterior: Posterior, score: Score): Prospect[] {
  const n = posterior.which.length;
  const rows = new Float64Array(experiment.outcomes * n);
  const joint = new Float64Array(n);
  return Array.from({ length: experiment.stimuli }, (_, stimulus) => {
    experiment.likelihoods(stimulus, posterior.which, rows);
    const chances: number[] = [];
    let expected = 0;
    for (let outcome = 0; outcome < experiment.outcomes; outcome++) {
      let chance = 0;
      for (let k = 0; k < n; k++) {
        const weight = posterior.mass[k]! * rows[outcome * n + k]!;
        joint[k] = weight;
        chance += weight;
      }
      chances.push(chance);
      if (chance > 0) expected += score(joint, chance);
    }
    return { stimulus, chances, expected };
  });
}

/** Entropy in bits. */
export const entropy: Score = (joint, chance) => {
  let sum = 0;
  for (let k = 0; k < joint.length; k++) if (joint[k]! > 0) sum += joint[k]! * Math.log2(joint[k]!);
  return chance * Math.log2(chance) - sum;
};

/** Variance of `quantity`, given in the order of the posterior's hypotheses. */
export const varianceOf =
  (quantity: Float64Array): Score =>
  (joint, chance) =>
    chance * spread(quantity, joint, chance);

/**
 * Of a band between two ends, each in the order of the posterior's hypotheses: the mean natural logarithm of their variances, weighed
 * `ends`, and that of their middle's variance, weighed 1 - `ends`; with `floor` added to each so that certainty has a value. In one pass: it is
 * asked for every outcome of every stimulus.
 */
export const logVariancesOf =
  (low: Float64Array, high: Float64Array, floor: number, ends: number): Score =>
  (joint, chance) => {
    let l = 0;
    let h = 0;
    let ll = 0;
    let hh = 0;
    let lh = 0;
    for (let k = 0; k < joint.length; k++) {
      const ofLow = joint[k]! * low[k]!;
      const ofHigh = joint[k]! * high[k]!;
      l += ofLow;
      h += ofHigh;
      ll += ofLow * low[k]!;
      hh += ofHigh * high[k]!;
      lh += ofLow * high[k]!;
    }
    const varLow = Math.max(0, ll / chance - (l / chance) ** 2);
    const varHigh = Math.max(0, hh / chance - (h / chance) ** 2);
    const middle = Math.max(0, (varLow + varHigh + 2 * (lh / chance - (l * h) / chance ** 2)) / 4);
    return chance * ((ends / 2) * Math.log((varLow + floor) * (varHigh + floor)) + (1 - ends) * Math.log(middle + floor));
  };

function spread(quantity: Float64Array, joint: Float64Array, chance: number): number {
  let first = 0;
  let second = 0;
  for (let k = 0; k < joint.length; k++) {
    const moment = joint[k]! * quantity[k]!;
    first += moment;
    second += moment * quantity[k]!;
  }
  return Math.max(0, second / chance - (first / chance) ** 2);
}
