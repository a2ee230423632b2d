// The two ends of the band: which value is the last that holds, which is the first that does not, and how well
// each is known. An end is *seen* when both have been held and the belief agrees with both, and *settled* when the
// belief agrees strongly; past a limit of the scale it cannot be seen, only believed. Where the lens was swept before, an end
// that is found where it was is *as before* once one of the two has been held anew.
import type { Belief } from '../belief/belief.ts';
import { chancesOfIn, chanceThat, centreOf } from '../belief/belief.ts';
import type { Hold } from '../hold.ts';
import { nearestOn, neighbour } from '../scale.ts';
import type { Steps } from '../../units.ts';

/** `last` is the outermost value that holds, `next` the one beyond it, where the scale has one. */
export type End =
  | { readonly known: 'open'; readonly last: Steps; readonly next: Steps | null; readonly heldIn: boolean; readonly heldOut: boolean }
  | { readonly known: 'as before'; readonly last: Steps; readonly next: Steps; readonly heldIn: boolean; readonly heldOut: boolean }
  | { readonly known: 'seen' | 'settled'; readonly last: Steps; readonly next: Steps }
  | { readonly known: 'past'; readonly last: Steps };

export interface Ends {
  readonly low: End;
  readonly high: End;
}

export const isSeen = ({ known }: End): boolean => known === 'seen' || known === 'settled' || known === 'as before';

/** Agreement of the belief that makes an end seen, and settled. */
const SEEN = 0.5;
const SETTLED = 0.9;
/** An edge this close to the middle of its two marginal values, in steps, is where they say it is. */
const ABOUT = 0.75;
/** The same where even the best value hardly holds: a band narrower than a step has its edges inside that value's own step. */
const ABOUT_A_STEP = 1.25;
/** Belief in an edge past the limit that lets the limit stand for the end, once the limit itself has held. */
const PAST = 0.9;

/** What the ends need to know of a hold. */
export interface HeldValue {
  readonly value: Steps;
  readonly counts: 'in' | 'out';
}

export const heldValues = (holds: readonly Pick<Hold, 'value' | 'reading'>[]): HeldValue[] =>
  holds.map(({ value, reading }) => ({ value, counts: reading.counts }));

/**
 * Reads both ends off the belief and the holds behind it; null when no value is believed to hold. The likeliest value is
 * believed once it has held, even where it fails as often as not: a band narrower than a step has no better.
 */
export function endsOf(belief: Belief, holds: readonly HeldValue[]): Ends | null {
  const chances = chancesOfIn(belief);
  const { values } = belief.model;
  const { remembered } = belief;
  const centre = values.indexOf(nearestOn(belief.model.scale, centreOf(belief).mean));
  const start = bestNear(chances, centre);
  const hardly = chances[start]! < SEEN;
  if (hardly && !holds.some((hold) => hold.value === values[start] && hold.counts === 'in')) return null;
  const end = (direction: 1 | -1): End => {
    let at = start;
    while ((chances[at + direction] ?? 0) >= SEEN) at += direction;
    const last = values[at]!;
    const next = neighbour(belief.model.scale, last, direction);
    const heldIn = holds.some((hold) => hold.value === last && hold.counts === 'in');
    if (next === null && heldIn && chanceThat(belief, isPast(belief, direction)) >= PAST) return { known: 'past', last };
    const heldOut = holds.some((hold) => hold.value === next && hold.counts === 'out');
    if (next !== null && heldIn !== heldOut && last === remembered?.[direction > 0 ? 'high' : 'low'])
      return { known: 'as before', last, next, heldIn, heldOut };
    if (next === null || !heldIn || !heldOut) return { known: 'open', last, next, heldIn, heldOut };
    const settled = chanceThat(belief, isAbout(belief, direction, (last + next) / 2, hardly ? ABOUT_A_STEP : ABOUT)) >= SETTLED;
    return { known: settled ? 'settled' : 'seen', last, next };
  };
  return { low: end(-1), high: end(1) };
}

/** Does this hypothesis put the edge where the seen end says it is? */
function isAbout(belief: Belief, direction: 1 | -1, middle: number, about: number): (hypothesis: number) => boolean {
  const { scale, low, high } = belief.model;
  const edge = direction > 0 ? high : low;
  return (h) => Math.abs(edge[h]! - middle) <= about * scale.step;
}

/** Does this hypothesis put the edge past the scale's limit on that side? */
function isPast(belief: Belief, direction: 1 | -1): (hypothesis: number) => boolean {
  const { scale, low, high } = belief.model;
  return direction > 0 ? (h) => high[h]! > scale.max : (h) => low[h]! < scale.min;
}

function bestNear(chances: readonly number[], centre: number): number {
  let best = centre;
  chances.forEach((chance, index) => {
    const better = chance - chances[best]!;
    if (better > 1e-9 || (Math.abs(better) <= 1e-9 && Math.abs(index - centre) < Math.abs(best - centre))) best = index;
  });
  return best;
}
