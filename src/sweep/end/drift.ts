// Did the focus move during the sweep? Two stories are weighed against each other: one band made all the holds, or the
// same band was shifted at some moment. The Bayes factor is their odds (Kass & Raftery 1995, J. Am. Stat. Assoc. 90:773),
// averaged over the moment and the shift, which nobody knows.
import { stimulusOf, type Belief } from '../belief/belief.ts';
import { from, joined, openingOf, upTo, weighed, type Read } from '../belief/accounts.ts';
import { averageLight } from '../belief/averageLight.ts';
import type { Lights } from '../belief/bandModel.ts';
import type { BandPosterior } from '../belief/lights.ts';
import { outcomesOf } from '../belief/observation.ts';
import type { Hold } from '../hold.ts';

/** Evidence that the focus moved, and after which hold it most likely did. */
export interface Drift {
  readonly bayesFactor: number;
  readonly afterHold: number;
}

/**
 * Odds at which the sweep stops and asks for a look in live view. They are read after every hold. The stories share one
 * light that is not known, which makes each of them explain more: odds of eight doubt as few still sweeps as odds of twenty
 * did with a light that was taken for known (found on simulated observers).
 */
export const STRONG = 8;
/** Neither story can be told from fewer holds than this on each side. */
export const FEWEST = 2;
/** In all of a series, one of which must have held: where nothing ever did, there is no band to have moved. */
const FEWEST_IN_ALL = 6;
/** Shifts of the band that a knock to the focus ring may bring, in steps. */
const SHIFTS = [-8, -6, -4, -3, -2, 2, 3, 4, 6, 8];

/** Only a reading less likely than this gives cause to tell another story at all. */
const DOUBTFUL = 0.2;
export const wereExpected = (holds: readonly Pick<Hold, 'predictive'>[]): boolean => holds.every(({ predictive }) => predictive >= DOUBTFUL);

/** What is needed of a hold. */
export type HoldTold = Read & Pick<Hold, 'predictive'>;

/**
 * Weighs the stories; moments at or before hold `trusted` are out of the question. Null while too little was held, or
 * while every reading was to be expected.
 */
export function driftOf(belief: Belief, holds: readonly HoldTold[], trusted: number): Drift | null {
  const first = Math.max(FEWEST, trusted + 1);
  const last = holds.length - FEWEST;
  const untold = holds.length < FEWEST_IN_ALL || holds.every(({ reading }) => reading.counts === 'out');
  if (last < first || untold || wereExpected(holds.slice(trusted))) return null;
  const moves = movesOf(belief, holds, first, last, SHIFTS);
  const moved = new Float64Array(holds.length);
  for (const shift of SHIFTS) {
    movedBy(moves, shift, (k, weight) => {
      moved[k]! += sum(weight);
    });
  }
  const afterHold = moved.indexOf(Math.max(...moved));
  return { bayesFactor: sum(moved) / (last - first + 1) / SHIFTS.length / moves.whole, afterHold };
}

/** A band that no story makes likelier than this share of the likeliest is left out. */
const SLIGHT = 1e-4;

/** One band that stays, to hold other stories against. */
export interface OneBand {
  readonly belief: Belief;
  readonly holds: readonly Read[];
  /** The bands worth looking at, as they were believed before the first hold. */
  readonly bands: BandPosterior;
  readonly before: readonly Lights[];
  /** The weight of each band had nothing moved, and their sum. */
  readonly still: Float64Array;
  readonly whole: number;
}

/** What the stories of a moved focus have in common: the first and the last hold before which it may have moved. */
export interface Moves extends OneBand {
  readonly first: number;
  readonly last: number;
}

export function movesOf(belief: Belief, holds: readonly HoldTold[], first: number, last: number, shifts: readonly number[]): Moves {
  return { ...oneBand(belief, holds, worthALook(belief, holds, first, last, shifts)), first, last };
}

/** What one band that stays gives to the holds, told of these bands. */
export function oneBand(belief: Belief, holds: readonly Read[], which: Int32Array): OneBand {
  const bands = openingOf(belief, which);
  const before = upTo(belief, bands, holds);
  const still = weighed(belief, bands, before.at(-1) ?? bands);
  return { belief, holds, bands, before, still, whole: sum(still) };
}

/** Tells the weight of each band after all holds, had it been shifted up by `shift` steps before hold `k`, for every such moment. */
export function movedBy({ belief, holds, first, last, bands, before }: Moves, shift: number, tell: (k: number, weight: Float64Array) => void): void {
  const after = from(belief, bands, holds, shift, first);
  for (let k = last; k >= first; k--) tell(k, joined(belief, bands, before[k]!, after[k]!));
}

/** The bands that explain the holds, moved or not, better than hardly. */
function worthALook(belief: Belief, holds: readonly HoldTold[], first: number, last: number, shifts: readonly number[]): Int32Array {
  const { which, start, chances, worthy } = quickLook(belief);
  const before: Float64Array[] = [start];
  for (const hold of holds) before.push(product(before.at(-1)!, chances(hold, 0)));
  const most = before.at(-1)!.slice();
  for (const shift of shifts) {
    const after = new Float64Array(which.length).fill(1);
    for (let k = holds.length - 1; k >= first; k--) {
      const one = chances(holds[k]!, shift);
      const till = before[k]!;
      for (let h = 0; h < most.length; h++) {
        after[h]! *= one[h]!;
        const weight = till[h]! * after[h]!;
        if (k <= last && weight > most[h]!) most[h] = weight;
      }
    }
  }
  return worthy(most);
}

/**
 * A quick look with one light for all. The bands whose edges lie between two values stand for their neighbours; all stories
 * are told of the same ones.
 */
export function quickLook(belief: Belief) {
  const { opening, model } = belief;
  const places = Int32Array.from(opening.which.keys()).filter((k) => model.isBetween(opening.which[k]!));
  const which = places.map((k) => opening.which[k]!);
  const light = averageLight(belief);
  return {
    which,
    start: Float64Array.from(places, (k) => opening.mass[k]!),
    chances: ({ value, reading }: Read, shift: number): Float64Array => light(stimulusOf(model, value) - shift, outcomesOf(reading, model.arrows), which),
    /** Of the greatest weight that any story gives each band: the bands worth an exact one. */
    worthy(most: Float64Array): Int32Array {
      const floor = SLIGHT * most.reduce((a, b) => Math.max(a, b), 0);
      return which.filter((_, k) => most[k]! > floor);
    },
  };
}

export function product(a: Float64Array, b: Float64Array): Float64Array {
  const both = new Float64Array(a.length);
  for (let k = 0; k < a.length; k++) both[k] = a[k]! * b[k]!;
  return both;
}

export function sum(weights: Float64Array): number {
  let total = 0;
  for (let k = 0; k < weights.length; k++) total += weights[k]!;
  return total;
}
