// Several sweeps of one situation as one estimate, and whether they agree. Inverse-variance weights and Cochran's Q;
// the spread between sweeps after DerSimonian & Laird (1986); I² after Higgins & Thompson (2002). A sweep's variance is
// read off its 95 % interval.
import type { Comparison, SweepsDiffer } from '../sweep/trouble/sweepsDiffer.ts';
import type { Measured } from './measured.ts';

export interface Estimate {
  readonly value: number;
  readonly variance: number;
}

export interface Combined {
  readonly count: number;
  /** As if all had measured the same. */
  readonly fixed: { readonly value: number; readonly error: number };
  readonly q: number;
  readonly freedom: number;
  /** Share of the spread that chance does not explain, 0 to 1. */
  readonly i2: number;
  /** Variance between the sweeps, beside each one's own. */
  readonly tau2: number;
  /** With that spread allowed for: the estimate to go by, with its standard error and 95 % interval. */
  readonly random: { readonly value: number; readonly error: number; readonly from: number; readonly to: number };
}

const HALF_95 = 1.959964;
/** Centres are told to half a step: no sweep is surer than rounding to that allows, 0.5 / √12. */
const SUREST = 0.5 / Math.sqrt(12);

/** Null for fewer than two. */
export function combine(estimates: readonly Estimate[]): Combined | null {
  if (estimates.length < 2) return null;
  const fixed = weighted(estimates, 0);
  const q = estimates.reduce((sum, { value, variance }) => sum + (value - fixed.value) ** 2 / variance, 0);
  const freedom = estimates.length - 1;
  const weights = estimates.map(({ variance }) => 1 / variance);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const scale = total - weights.reduce((sum, weight) => sum + weight ** 2, 0) / total;
  const tau2 = Math.max(0, (q - freedom) / scale);
  const random = weighted(estimates, tau2);
  return {
    count: estimates.length,
    fixed,
    q,
    freedom,
    i2: q > freedom ? (q - freedom) / q : 0,
    tau2,
    random: { ...random, from: random.value - HALF_95 * random.error, to: random.value + HALF_95 * random.error },
  };
}

function weighted(estimates: readonly Estimate[], tau2: number): { value: number; error: number } {
  const total = estimates.reduce((sum, { variance }) => sum + 1 / (variance + tau2), 0);
  const value = estimates.reduce((sum, estimate) => sum + estimate.value / (estimate.variance + tau2), 0) / total;
  return { value, error: Math.sqrt(1 / total) };
}

/** The estimate of a sweep; null where its centre or interval is not known. */
export function estimateOf({ centre, interval }: Pick<Measured, 'centre' | 'interval'>): Estimate | null {
  if (centre === null || interval === null) return null;
  return { value: centre, variance: Math.max(SUREST, (interval.to - interval.from) / 2 / HALF_95) ** 2 };
}

/** How far apart two centres lie where something changed between the sweeps (sd, steps; common practice, no source). */
const CHANGED = 3;
/** Strong evidence, after Kass & Raftery (1995, J. Am. Stat. Assoc. 90:773). */
const STRONG = 20;

/**
 * Two sweeps side by side. With one centre behind both their difference is normal about 0 with both variances; with two, the
 * spread between them comes on top: the Bayes factor of two normal densities.
 */
export function compare(one: Estimate, other: Estimate): Comparison {
  const apart = Math.abs(one.value - other.value);
  const chance = one.variance + other.variance;
  const changed = chance + CHANGED ** 2;
  const allowed = HALF_95 * Math.sqrt(chance);
  const bayesFactor = Math.sqrt(chance / changed) * Math.exp((apart ** 2 / 2) * (1 / chance - 1 / changed));
  return { apart, allowed, differ: apart > allowed, bayesFactor };
}

/** The trouble that the last two sweeps of a situation show, oldest first; null while chance may explain them. */
export function sweepsDiffer(estimates: readonly Estimate[]): SweepsDiffer | null {
  const [before, last] = estimates.slice(-2);
  if (!before || !last) return null;
  const compared = compare(before, last);
  return compared.differ && compared.bayesFactor >= STRONG ? { trouble: 'sweeps differ', ...compared } : null;
}
