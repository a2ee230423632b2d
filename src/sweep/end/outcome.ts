// What comes out of a sweep. With both ends seen it is the taught rule (common practice, no source): the middle of the
// contiguous values that hold; where the middle falls between two values, the side with more belief. Everything else
// says plainly that less is known.
import * as v from 'valibot';
import { centreInterval, centreOf, chanceThat, type Belief } from '../belief/belief.ts';
import { nearestOn, type Scale } from '../scale.ts';
import { Seconds, Steps } from '../../units.ts';
import { readiness as judge } from './care.ts';
import { surestValue, withinOneStep } from './confidence.ts';
import { endsOf, isSeen, type Ends, type HeldValue } from './ends.ts';

const Tally = v.object({ holds: v.pipe(v.number(), v.integer(), v.minValue(0)), seconds: Seconds });
export type Tally = v.InferOutput<typeof Tally>;

const Interval = v.object({ from: v.number(), to: v.number() });

export const Outcome = v.variant('found', [
  v.object({
    found: v.literal('band'),
    low: Steps,
    high: Steps,
    /** Middle of the band; half a step where the band has an even count. */
    centre: v.number(),
    chosen: Steps,
    /** The other middle value, when the belief hardly prefers one. */
    other: v.nullable(Steps),
    /** 95 % interval of the centre. */
    interval: Interval,
    /** Belief that the centre lies within one step of `chosen`. */
    within: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
    /** Were both ends held on both sides, or are they only believed? */
    ends: v.picklist(['seen', 'believed']),
    tally: Tally,
  }),
  v.object({
    found: v.literal('past the limit'),
    /** The limit the band runs past. */
    side: v.picklist(['low', 'high', 'both']),
    /** The end that can be seen, and the centre the band must at least reach; null when neither end can be seen. */
    visible: v.nullable(Steps),
    bound: v.nullable(v.number()),
    interval: Interval,
    tally: Tally,
  }),
  v.object({
    /** A width transfer: the visible end at critical focus, and the width measured with the focus set aside. */
    found: v.literal('carried over'),
    side: v.picklist(['low', 'high']),
    /** The last value that held at the visible end; null where the light never came on at critical focus. */
    visible: v.nullable(Steps),
    /** The outermost values that held with the focus set aside. */
    aside: v.object({ low: Steps, high: Steps }),
    /** Half the band, edge to edge: the edges lie half a step outside the outermost values that hold. */
    halfWidth: v.number(),
    halfInterval: Interval,
    /** It may lie past the limit. */
    centre: v.number(),
    interval: Interval,
    /** The value of the scale nearest to the centre, and the belief that the centre lies within one step of it. */
    chosen: Steps,
    within: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
    /** Does the light hold at that value? */
    inside: v.boolean(),
    /** The centre is off the scale, or the value outside the band. */
    service: v.boolean(),
    /** Of the series with the focus set aside. */
    ends: v.picklist(['seen', 'believed']),
    tally: Tally,
  }),
  v.object({ found: v.literal('beyond the scale'), side: v.picklist(['above', 'below']), tally: Tally }),
  v.object({ found: v.literal('nothing'), tally: Tally }),
]);
export type Outcome = v.InferOutput<typeof Outcome>;
export type BandOutcome = Extract<Outcome, { found: 'band' }>;
export type CarriedOutcome = Extract<Outcome, { found: 'carried over' }>;

/** A preference smaller than this is no preference. */
const EVEN = 0.02;

/** Draws the outcome of the holds so far; the tally counts those of earlier series, too. */
export function outcomeOf(belief: Belief, held: readonly HeldValue[], tally: Tally): Outcome {
  const judged = judge(belief, held, 'quick');
  if (judged.ready && judged.as === 'beyond the scale') return { found: 'beyond the scale', side: judged.side, tally };
  const ends = endsOf(belief, held);
  if (!ends || held.every(({ counts }) => counts === 'out')) return { found: 'nothing', tally };
  if (ends.low.known === 'past' || ends.high.known === 'past') return pastTheLimit(belief, ends, tally);
  return band(belief, ends, tally);
}

function band(belief: Belief, ends: Ends, tally: Tally): BandOutcome {
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
    interval: centreInterval(belief),
    within: withinOneStep(belief, chosen),
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
