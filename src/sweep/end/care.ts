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
const NOTHING_AFTER = 10;
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
  if (holds.length >= NOTHING_AFTER && holds.every((hold) => hold.counts === 'out') && nothingHolds(belief, holds)) {
    return { ready: true, as: 'nothing held' };
  }
  if (surestValue(belief).within < SURE) return { ready: false, wanted: 'centre', ends };
  if (care === 'quick') return { ready: true, as: 'band', ends };
  const enough = (end: End) => end.known === 'settled' || (care === 'standard' && end.known === 'seen');
  if (ends && enough(ends.low) && enough(ends.high)) return { ready: true, as: 'band', ends };
  return { ready: false, wanted: 'ends', ends };
}

function pastTheLimit({ low, high }: Ends): boolean {
  const past = (end: End) => end.known === 'past';
  return (past(low) && (past(high) || isSeen(high))) || (past(high) && isSeen(low));
}

function beyondTheScale(belief: Belief): 'above' | 'below' | null {
  const { scale, low, high } = belief.model;
  if (chanceThat(belief, (h) => low[h]! > scale.max) >= BEYOND) return 'above';
  if (chanceThat(belief, (h) => high[h]! < scale.min) >= BEYOND) return 'below';
  return null;
}

/** Hardly a chance anywhere; or, with a band that may be narrower than a step, none in the likeliest value time and again. */
function nothingHolds(belief: Belief, holds: readonly HeldValue[]): boolean {
  const likeliest = likeliestIn(belief);
  return likeliest.chance < NOTHING_BELOW || holds.filter(({ value }) => value === likeliest.value).length >= TIME_AND_AGAIN;
}
