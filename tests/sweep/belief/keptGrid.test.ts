// The numbers of the general grid engine and of what it values, as they were, on small experiments that a seed draws; and what is so
// at the bounds of each.
import { describe, expect, test } from 'vitest';
import { entropy, logVariancesOf, lookAhead, varianceOf } from '../../../src/sweep/belief/criteria.ts';
import { momentsOf, observe, predict, standIn, startFrom, type Experiment } from '../../../src/sweep/belief/grid.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';

/** Chances that a seed draws, some of them none; each hypothesis's outcomes sum to 1. */
function experimentOf(seed: number, hypotheses: number, stimuli: number, outcomes: number): Experiment {
  const random = seededRandom(seed);
  const table = Array.from({ length: hypotheses * stimuli }, () => {
    const row = Array.from({ length: outcomes }, () => Math.max(0, random() - 0.15));
    const sum = row.reduce((all, each) => all + each, 0);
    return row.map((each) => each / sum);
  });
  const likelihoods = (stimulus: number, which: Int32Array, into: Float64Array): void =>
    which.forEach((h, k) => {
      for (let outcome = 0; outcome < outcomes; outcome++) into[outcome * which.length + k] = table[stimulus * hypotheses + h]?.[outcome] ?? 0;
    });
  return { hypotheses, stimuli, outcomes, likelihoods };
}

const experiment = experimentOf(11, 9, 5, 4);
const prior = startFrom(Float64Array.from([3, 0, 1, 4, 1, 5, 0, 2, 6]));
const quantity = Float64Array.from([-4, -2.5, -1, 0, 1.5, 2, 3, 7, 9]);

describe('the grid', () => {
  test('observes, predicts, and tells the moments of a quantity', () => {
    const seen = [[0], [3], [1, 2], [0, 1, 2, 3]];
    const rows = Array.from({ length: experiment.stimuli }, (_, stimulus) =>
      seen.map((some) => {
        const { posterior, predictive } = observe(experiment, prior, stimulus, some, 0.05);
        const { mean, variance } = momentsOf(posterior, quantity);
        return [predictive, mean, variance, ...predict(experiment, posterior, stimulus), ...posterior.which, ...posterior.mass];
      }),
    );
    expect(sevenDigits([[...prior.which], [...prior.mass], momentsOf(prior, quantity), rows])).toMatchSnapshot();
  });

  test('drops a hypothesis at the floor and keeps one above it', () => {
    const certain: Experiment = { hypotheses: 4, stimuli: 1, outcomes: 1, likelihoods: (_, which, into) => into.fill(1, 0, which.length) };
    const quarters = startFrom(Float64Array.from([1, 1, 2, 4]));
    // An eighth is the floor itself.
    expect([...observe(certain, quarters, 0, [0], 0.125).posterior.which]).toEqual([2, 3]);
    expect([...observe(certain, quarters, 0, [0], 0.1249).posterior.which]).toEqual([0, 1, 2, 3]);
    expect([...observe(certain, quarters, 0, [0]).posterior.which]).toEqual([0, 1, 2, 3]);
  });

  test('lets few stand for many, at evenly spaced quantiles', () => {
    const chances = startFrom(Float64Array.from({ length: 23 }, (_, k) => (k * 7) % 11)).mass;
    const rows = [1, 2, 5, 12, 40].map((count) => {
      const { places, mass } = standIn(chances, count);
      return [...places, ...mass];
    });
    expect(sevenDigits(rows)).toMatchSnapshot();
    // The quantile of a half lies at the end of the first of two halves, and so in the second.
    expect([...standIn(Float64Array.from([0.5, 0.5]), 1).places]).toEqual([1]);
    // More chance than one gives no more than was asked for.
    expect([...standIn(Float64Array.from([1, 1, 1]), 3).mass]).toEqual([1]);
  });
});

describe('one step of look-ahead', () => {
  const low = Float64Array.from(prior.which, (h) => quantity[h] ?? 0);
  const high = low.map((edge, k) => edge + 2 + ((k * 5) % 3));

  test('values a posterior by entropy, by variance, and by the variances of two ends', () => {
    const scores = [entropy, varianceOf(low), logVariancesOf(low, high, 0.1, 1.2), logVariancesOf(high, low, 0.3, 0.4)];
    const rows = scores.map((score) => lookAhead(experiment, prior, score).map(({ stimulus, chances, expected }) => [stimulus, expected, ...chances]));
    expect(sevenDigits(rows)).toMatchSnapshot('after a trial');
    expect(sevenDigits(scores.map((score) => score(prior.mass.slice(), 1)))).toMatchSnapshot('now');
    expect(
      sevenDigits(
        scores.map((score) =>
          score(
            prior.mass.map((each) => each / 4),
            0.25,
          ),
        ),
      ),
    ).toMatchSnapshot('of a quarter');
  });

  test('an outcome that never comes is worth nothing', () => {
    const never: Experiment = { hypotheses: 2, stimuli: 1, outcomes: 2, likelihoods: (_, which, into) => into.fill(0).fill(1, 0, which.length) };
    const [only] = lookAhead(never, startFrom(Float64Array.from([1, 1])), () => 3);
    expect(only).toEqual({ stimulus: 0, chances: [1, 0], expected: 3 });
  });

  test('certainty has no variance, whatever rounding leaves, and the entropy of a hypothesis without a chance is none', () => {
    const same = Float64Array.from([0.1, 0.1, 0.1]);
    const joint = Float64Array.from([0.3, 0.3, 0.4]);
    expect(varianceOf(same)(joint, 1)).toBeGreaterThanOrEqual(0);
    expect(logVariancesOf(same, same, 0.25, 0.5)(joint, 1)).toBeCloseTo(0.25 * Math.log(0.0625) + 0.5 * Math.log(0.25), 9);
    expect(entropy(Float64Array.from([0.5, 0, 0.5]), 1)).toBe(1);
  });

  test('a variance that rounding makes negative is none', () => {
    const random = seededRandom(3);
    for (let nth = 0; nth < 200; nth++) {
      const at = 10 * random();
      const points = Float64Array.from([at, at, at]);
      const joint = Float64Array.from([random(), random(), random()]);
      const chance = joint.reduce((all, each) => all + each, 0);
      expect(varianceOf(points)(joint, chance)).toBeGreaterThanOrEqual(0);
      expect(momentsOf({ which: Int32Array.from([0, 1, 2]), mass: joint.map((each) => each / chance) }, points).variance).toBeGreaterThanOrEqual(0);
    }
  });
});
