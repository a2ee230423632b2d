// Exact Bayesian bookkeeping over any finite set of hypotheses, stimuli and outcomes (Watson 2017, J. Vision 17(3):10,
// eq. 5–8). It knows nothing about focus, so published examples can check it.

/** What could be true, what could be tried, and what could be seen. */
export interface Experiment {
  readonly hypotheses: number;
  readonly stimuli: number;
  readonly outcomes: number;
  /**
   * Writes P(outcome | hypothesis, stimulus) of the hypotheses listed in `which`, one outcome after another:
   * `into[outcome * which.length + k]` belongs to hypothesis `which[k]`. For each k the outcomes sum to 1.
   */
  likelihoods(stimulus: number, which: Int32Array, into: Float64Array): void;
}

/** The hypotheses still alive and their probabilities, which sum to 1. Treat both arrays as read-only. */
export interface Posterior {
  readonly which: Int32Array;
  readonly mass: Float64Array;
}

/** All hypotheses, weighted by `weights` (any positive scale). */
export function startFrom(weights: Float64Array): Posterior {
  const which = Int32Array.from(weights, (_, index) => index);
  return prune({ which, mass: normalised(weights) }, 0);
}

/**
 * Bayes' rule for "one of these outcomes was seen at this stimulus". `predictive` is the probability the posterior
 * gave to that beforehand; hypotheses whose mass falls below `floor` are dropped.
 */
export function observe(
  experiment: Experiment,
  prior: Posterior,
  stimulus: number,
  seen: readonly number[],
  floor = 0,
): { posterior: Posterior; predictive: number } {
  const n = prior.which.length;
  const rows = new Float64Array(experiment.outcomes * n);
  experiment.likelihoods(stimulus, prior.which, rows);
  const mass = new Float64Array(n);
  let predictive = 0;
  for (let k = 0; k < n; k++) {
    let likelihood = 0;
    for (const outcome of seen) likelihood += rows[outcome * n + k]!;
    const weight = prior.mass[k]! * likelihood;
    mass[k] = weight;
    predictive += weight;
  }
  return { posterior: prune({ which: prior.which, mass: normalised(mass) }, floor), predictive };
}

/** P(outcome) at a stimulus, averaged over the posterior. */
export function predict(experiment: Experiment, posterior: Posterior, stimulus: number): number[] {
  const n = posterior.which.length;
  const rows = new Float64Array(experiment.outcomes * n);
  experiment.likelihoods(stimulus, posterior.which, rows);
  return Array.from({ length: experiment.outcomes }, (_, outcome) => {
    let sum = 0;
    for (let k = 0; k < n; k++) sum += posterior.mass[k]! * rows[outcome * n + k]!;
    return sum;
  });
}

/** Mean and variance of `quantity` under the posterior. */
export function momentsOf(posterior: Posterior, quantity: Float64Array): { mean: number; variance: number } {
  let mean = 0;
  let square = 0;
  for (let k = 0; k < posterior.which.length; k++) {
    const x = quantity[posterior.which[k]!]!;
    mean += posterior.mass[k]! * x;
    square += posterior.mass[k]! * x * x;
  }
  return { mean, variance: Math.max(0, square - mean * mean) };
}

/**
 * A stand-in of at most `count` of these chances for the look-ahead: systematic resampling (Kitagawa 1996, J. Comput.
 * Graph. Stat. 5:1, appendix) at fixed, evenly spaced quantiles, so that the same chances always give the same stand-in. The
 * places that stand in, and their own chances.
 */
export function standIn(chances: Float64Array, count: number): { places: Int32Array; mass: Float64Array } {
  const places: number[] = [];
  const mass: number[] = [];
  let below = 0;
  let taken = 0;
  for (let k = 0; k < chances.length; k++) {
    below += chances[k]!;
    let copies = 0;
    while (taken < count && (taken + 0.5) / count < below) {
      copies++;
      taken++;
    }
    if (copies > 0) {
      places.push(k);
      mass.push(copies);
    }
  }
  return { places: Int32Array.from(places), mass: normalised(Float64Array.from(mass)) };
}

function normalised(weights: Float64Array): Float64Array {
  let sum = 0;
  for (const weight of weights) sum += weight;
  return weights.map((weight) => weight / sum);
}

function prune(posterior: Posterior, floor: number): Posterior {
  let alive = 0;
  for (const p of posterior.mass) if (p > floor) alive++;
  if (alive === posterior.mass.length) return posterior;
  const which = new Int32Array(alive);
  const mass = new Float64Array(alive);
  let next = 0;
  for (let k = 0; k < posterior.mass.length; k++) {
    if (posterior.mass[k]! > floor) {
      which[next] = posterior.which[k]!;
      mass[next++] = posterior.mass[k]!;
    }
  }
  return { which, mass: normalised(mass) };
}
