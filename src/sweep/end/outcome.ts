// What comes out of a sweep. With both ends seen it is the taught rule (common practice, no source): the middle of the
// contiguous values that hold; where the middle falls between two values, the side with more belief. Everything else
// says plainly that less is known.
import { centreInterval, centreOf, chanceThat, modest, type Bands, type Belief } from '../belief/belief.ts';
import { nearestOn, type Scale } from '../scale.ts';
import type { Steps } from '../../units.ts';
import { readiness as judge } from './care.ts';
import { surestValue, withinOneStep } from './confidence.ts';
import { endsOf, isSeen, type Ends, type HeldValue } from './ends.ts';
import type { BandOutcome, CarriedOutcome, Outcome, Tally } from './found.ts';

export type { BandOutcome, CarriedOutcome, Outcome, Tally };

/** A preference smaller than this is no preference. */
const EVEN = 0.02;

/**
 * Draws the outcome of the holds so far; the tally counts those of earlier series, too. `told` gives what is stated of the
 * centre, where a band is.
 */
export function outcomeOf(belief: Belief, held: readonly HeldValue[], tally: Tally, told: () => Bands = () => modest(belief)): Outcome {
  const judged = judge(belief, held, 'quick');
  if (judged.ready && judged.as === 'beyond the scale') return { found: 'beyond the scale', side: judged.side, tally };
  const ends = endsOf(belief, held);
  if (!ends || held.every(({ counts }) => counts === 'out')) return { found: 'nothing', tally };
  if (ends.low.known === 'past' || ends.high.known === 'past') return pastTheLimit(belief, ends, tally);
  return band(belief, ends, tally, told());
}

function band(belief: Belief, ends: Ends, tally: Tally, told: Bands): BandOutcome {
  const low = ends.low.last;
  const high = ends.high.last;
  const seen = isSeen(ends.low) && isSeen(ends.high);
  const taught = nearestMiddle(belief, (low + high) / 2);
  const chosen = seen ? taught.chosen : surestValue(belief).value;
  return {
    found: 'band',
    low,
    high,
    centre: seen ? (low + high) / 2 : roundToHalf(centreOf(belief).mean, belief.model.scale),
    chosen,
    other: seen ? taught.other : null,
    interval: centreInterval(told),
    within: (withinOneStep(belief, chosen) + withinOneStep(told, chosen)) / 2,
    ends: seen ? 'seen' : 'believed',
    tally,
  };
}

/** The value nearest to the middle of a band, and the other choice where the count is even and the belief is too. */
export function nearestMiddle(belief: Belief, middle: number): { chosen: Steps; other: Steps | null } {
  const { scale, centre } = belief.model;
  const down = nearestOn(scale, middle - scale.step / 2);
  const up = nearestOn(scale, middle + scale.step / 2);
  if (up - down !== scale.step || nearestOn(scale, middle) === middle) return { chosen: nearestOn(scale, middle), other: null };
  const above = chanceThat(belief, (h) => centre[h]! > middle);
  const below = chanceThat(belief, (h) => centre[h]! < middle);
  if (Math.abs(above - below) > EVEN) return { chosen: above > below ? up : down, other: null };
  return Math.abs(down) < Math.abs(up) ? { chosen: down, other: up } : { chosen: up, other: down };
}

function pastTheLimit(belief: Belief, { low, high }: Ends, tally: Tally): Outcome {
  const { scale } = belief.model;
  const interval = centreInterval(belief);
  if (low.known === 'past' && high.known === 'past') {
    return { found: 'past the limit', side: 'both', visible: null, bound: null, interval, tally };
  }
  const past = high.known === 'past' ? 'high' : 'low';
  const visible = past === 'high' ? low.last : high.last;
  const limit = past === 'high' ? scale.max : scale.min;
  return { found: 'past the limit', side: past, visible, bound: (visible + limit) / 2, interval, tally };
}

export const roundToHalf = (value: number, scale: Scale): number => Math.round((2 * value) / scale.step) * (scale.step / 2);
