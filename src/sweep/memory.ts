// What the logbook remembers of a situation when a sweep opens. It is stored with the plan, so that the belief can be
// opened again just as it was.
import * as v from 'valibot';
import { Moment, Steps } from '../storedUnits.ts';

/** One thing the logbook remembers of the centre: where it was, how far it may have moved (sd, steps), how much it counts. */
const RememberedCentre = v.object({
  centre: v.number(),
  sd: v.pipe(v.number(), v.minValue(0.5)),
  weight: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
  /** When it was measured, and whether in this very situation or with the same pairing elsewhere; older journals do not say. */
  from: v.exactOptional(v.object({ at: Moment, of: v.picklist(['situation', 'pairing']) })),
});
export type RememberedCentre = v.InferOutput<typeof RememberedCentre>;

/** What the logbook brings to a sweep; an empty one leaves the plain prior alone. */
export const Memory = v.object({
  centres: v.array(RememberedCentre),
  /** Median half-width of comparable lenses in steps, and the spread of its logarithm. */
  halfWidth: v.nullable(v.object({ median: v.pipe(v.number(), v.minValue(0.25)), logSd: v.pipe(v.number(), v.minValue(0.1)) })),
  /**
   * The outermost values that held when this situation was last swept, both ends seen, and the value to enter where it was itself
   * held; nothing where it was not so, and in older journals.
   */
  ends: v.exactOptional(v.object({ low: Steps, high: Steps, proven: v.exactOptional(Steps) })),
  /** How the light of this body failed in earlier sweeps, and how many steps outside the band; older journals do not say. */
  lamp: v.exactOptional(v.array(v.object({ outside: v.pipe(v.number(), v.finite()), light: v.picklist(['late', 'flicker', 'dark']) }))),
});
export type Memory = v.InferOutput<typeof Memory>;

export const NO_MEMORY: Memory = { centres: [], halfWidth: null };
