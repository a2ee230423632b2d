// Did the focus move during the sweep? Two stories are weighed against each other: one band made all the holds, or the
// same band was shifted at some moment. The Bayes factor is their odds (Kass & Raftery 1995, J. Am. Stat. Assoc. 90:773:
// above 20 is strong), averaged over the moment and the shift, which nobody knows.
import type { BandModel } from '../belief/bandModel.ts';
import { stimulusOf, type Belief } from '../belief/belief.ts';
import type { Posterior } from '../belief/grid.ts';
import { outcomesOf } from '../belief/observation.ts';
import type { Hold } from '../hold.ts';

/** Evidence that the focus moved, and after which hold it most likely did. */
export interface Drift {
  readonly bayesFactor: number;
  readonly afterHold: number;
}

/**
 * Odds at which the sweep stops and asks for a look in live view. They are read after every hold: at ten, 3.5 % of still
 * sweeps on bodies with arrows were doubted, at twenty under 2 % (found on simulated observers).
 */
export const STRONG = 20;
/** Neither story can be told from fewer holds than this on each side. */
export const FEWEST = 2;
/** Shifts of the band that a knock to the focus ring may bring, in steps. */
const SHIFTS = [-8, -6, -4, -3, -2, 2, 3, 4, 6, 8];

/** Only a reading less likely than this gives cause to tell the other story at all. */
const DOUBTFUL = 0.05;

/** What a story needs to know of a hold. */
export type Read = Pick<Hold, 'value' | 'reading'>;
export type Told = Read & Pick<Hold, 'predictive'>;

/**
 * Weighs the stories; moments at or before hold `trusted` are out of the question. Null while too little was held, or
 * while every reading was to be expected.
 */
export function driftOf(belief: Belief, holds: readonly Told[], trusted: number): Drift | null {
  const first = Math.max(FEWEST, trusted + 1);
  const last = holds.length - FEWEST;
  if (last < first || holds.slice(trusted).every(({ predictive }) => predictive >= DOUBTFUL)) return null;
  const bands = plainBands(belief);
  const before = unmoved(belief, bands, holds);
  const whole = sum(before.at(-1) ?? bands.weight);
  const moved = new Float64Array(holds.length);
  for (const shift of SHIFTS) {
    movedBy(shift, { belief, bands, holds, before, first, last }, (k, weight) => {
      moved[k]! += sum(weight);
    });
  }
  const afterHold = moved.indexOf(Math.max(...moved));
  return { bayesFactor: sum(moved) / (last - first + 1) / SHIFTS.length / whole, afterHold };
}

/** Some bands of a belief, each with a weight. */
export interface Bands {
  readonly which: Int32Array;
  readonly weight: Float64Array;
}

/** Some of a belief's bands, with the weight they had before the first hold; worked out once for each opening. */
export function bandsThat(isOne: (model: BandModel) => (hypothesis: number) => boolean): (belief: Belief) => Bands {
  const known = new WeakMap<Posterior, Bands>();
  return ({ model, opening }) => {
    const before = known.get(opening);
    if (before) return before;
    const counts = isOne(model);
    const places = [...opening.which.keys()].filter((k) => counts(opening.which[k]!));
    const bands = {
      which: Int32Array.from(places, (k) => opening.which[k]!),
      weight: Float64Array.from(places, (k) => opening.mass[k]!),
    };
    known.set(opening, bands);
    return bands;
  };
}

/** One band for each pair of edges. */
export const plainBands = bandsThat(({ isPlain }) => isPlain);

/** The weight of each band after each hold, had nothing moved. */
export function unmoved(belief: Belief, { which, weight }: Bands, holds: readonly Read[]): Float64Array[] {
  let running = weight;
  return holds.map((hold) => (running = product(running, likelihoods(belief, which, hold, 0))));
}

interface Moves {
  readonly belief: Belief;
  readonly bands: Bands;
  readonly holds: readonly Told[];
  /** As `unmoved` gives it. */
  readonly before: readonly Float64Array[];
  /** The first and the last hold before which it may have moved. */
  readonly first: number;
  readonly last: number;
}

/** Tells the weight of each band after all holds, had it been shifted up by `shift` steps before hold `k`, for every such moment. */
export function movedBy(
  shift: number,
  { belief, bands, holds, before, first, last }: Moves,
  tell: (k: number, weight: Float64Array) => void,
): void {
  let after: Float64Array = new Float64Array(bands.which.length).fill(1);
  for (let k = holds.length - 1; k >= first; k--) {
    const hold = holds[k];
    if (!hold) continue;
    after = product(after, likelihoods(belief, bands.which, hold, shift));
    if (k <= last) tell(k, product(before[k - 1] ?? bands.weight, after));
  }
}

/** The chance each band gives to a hold, had it been shifted up by `shift` steps. */
export function likelihoods({ model }: Belief, which: Int32Array, { value, reading }: Read, shift: number): Float64Array {
  const n = which.length;
  const rows = new Float64Array(model.outcomes * n);
  model.likelihoods(stimulusOf(model, value) - shift, which, rows);
  const chance = new Float64Array(n);
  for (const outcome of outcomesOf(reading, model.arrows)) {
    for (let k = 0; k < n; k++) chance[k]! += rows[outcome * n + k]!;
  }
  return chance;
}

const product = (a: Float64Array, b: Float64Array): Float64Array => a.map((x, k) => x * b[k]!);
export const sum = (weights: Float64Array): number => weights.reduce((total, weight) => total + weight, 0);
