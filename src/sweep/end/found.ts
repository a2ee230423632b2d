// What can come out of a sweep, as it is kept: a band, or plainly how much less is known.
import * as v from 'valibot';
import { Seconds, Steps } from '../../storedUnits.ts';

const Tally = v.object({ holds: v.pipe(v.number(), v.integer(), v.minValue(0)), seconds: Seconds });
export type Tally = v.InferOutput<typeof Tally>;

/** A damaged file may hold a number that no sweep can find. */
const Finite = v.pipe(v.number(), v.finite());
const Interval = v.object({ from: Finite, to: Finite });

export const Outcome = v.variant('found', [
  v.object({
    found: v.literal('band'),
    low: Steps,
    high: Steps,
    /** Middle of the band; half a step where the band has an even count. */
    centre: Finite,
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
    bound: v.nullable(Finite),
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
    halfWidth: Finite,
    halfInterval: Interval,
    /** It may lie past the limit. */
    centre: Finite,
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
