// When a sweep may end, by the care the person chose. Quick asks only for a sure centre; standard also wants both
// ends seen; thorough wants both settled. A limit of the scale stands for an end that cannot be seen.
import type { Care } from '../care.ts';
import { chanceThat, likeliestIn, type Belief } from '../belief/belief.ts';
import { surestValue } from './confidence.ts';
import { endsOf, isSeen, type End, type Ends, type HeldValue } from './ends.ts';

/** Belief within one step that counts as a sure centre. */
export const SURE = 0.95;
/** Belief in a band that lies wholly past a limit, and the chance of a steady light below which nothing holds. */
const BEYOND = 0.9;
const NOTHING_BELOW = 0.25;
const NOTHING_AFTER = 12;
/** A band that more likely than not lies past one limit is looked for so much longer. */
const LEANING = 0.5;
const NOTHING_AT_ALL_AFTER = 18;
/** A value that held half of the time would fail so often in a row once in sixteen (common practice, no source). */
const TIME_AND_AGAIN = 4;

/** Why the sweep may end, or what is still wanted. */
export type Readiness =
  | { readonly ready: false; readonly wanted: 'centre' | 'ends'; readonly ends: Ends | null }
  | { readonly ready: true; readonly as: 'band'; readonly ends: Ends | null }
  | { readonly ready: true; readonly as: 'past the limit'; readonly ends: Ends }
  | { readonly ready: true; readonly as: 'beyond the scale'; readonly side: 'above' | 'below' }
  | { readonly ready: true; readonly as: 'nothing held' };

/** Judges whether the holds so far are enough for this care. */
export function readiness(belief: Belief, holds: readonly HeldValue[], care: Care): Readiness {
  const ends = endsOf(belief, holds);
  const off = beyondTheScale(belief);
  if (off) return { ready: true, as: 'beyond the scale', side: off };
  if (ends && pastTheLimit(ends)) return { ready: true, as: 'past the limit', ends };
  const never = holds.every((hold) => hold.counts === 'out');
  if (never && holds.length >= NOTHING_AFTER && nothingHolds(belief, holds) && (holds.length >= NOTHING_AT_ALL_AFTER || !leans(belief))) {
    return { ready: true, as: 'nothing held' };
  }
  if (surestValue(belief).within < SURE) return { ready: false, wanted: 'centre', ends };
  if (care === 'quick') return { ready: true, as: 'band', ends };
  const enough = (end: End) => end.known === 'settled' || (care === 'standard' && isSeen(end));
  if (ends && enough(ends.low) && enough(ends.high)) return { ready: true, as: 'band', ends };
  return { ready: false, wanted: 'ends', ends };
}

function pastTheLimit({ low, high }: Ends): boolean {
  const past = (end: End) => end.known === 'past';
  return (past(low) && (past(high) || isSeen(high))) || (past(high) && isSeen(low));
}

function beyondTheScale(belief: Belief): 'above' | 'below' | null {
  const { above, below } = chancesBeyond(belief);
  if (above >= BEYOND) return 'above';
  return below >= BEYOND ? 'below' : null;
}

function leans(belief: Belief): boolean {
  const { above, below } = chancesBeyond(belief);
  return Math.max(above, below) >= LEANING;
}

function chancesBeyond(belief: Belief): { above: number; below: number } {
  const { scale, low, high } = belief.model;
  return { above: chanceThat(belief, (h) => low[h]! > scale.max), below: chanceThat(belief, (h) => high[h]! < scale.min) };
}

/** Hardly a chance anywhere; or, with a band that may be narrower than a step, none in the likeliest value time and again. */
function nothingHolds(belief: Belief, holds: readonly HeldValue[]): boolean {
  const likeliest = likeliestIn(belief);
  return likeliest.chance < NOTHING_BELOW || holds.filter(({ value }) => value === likeliest.value).length >= TIME_AND_AGAIN;
}
