// Several sweeps of one situation as one estimate, and whether they agree. Inverse-variance weights and Cochran's Q;
// the spread between sweeps after DerSimonian & Laird (1986); I² after Higgins & Thompson (2002). A sweep's variance is
// read off its 95 % interval.
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
export function estimateOf({ centre, interval }: Measured): Estimate | null {
  if (centre === null || interval === null) return null;
  return { value: centre, variance: Math.max(SUREST, (interval.to - interval.from) / 2 / HALF_95) ** 2 };
}

/** Two sweeps side by side: how far apart, how far chance may bring them apart with 95 %, and whether they differ by more. */
export function compare(one: Estimate, other: Estimate): { apart: number; allowed: number; differ: boolean } {
  const apart = Math.abs(one.value - other.value);
  const allowed = HALF_95 * Math.sqrt(one.variance + other.variance);
  return { apart, allowed, differ: apart > allowed };
}
