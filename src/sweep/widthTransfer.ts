// A width transfer: the finished sweep of a band that no correction reaches whole, carried in the plan of a second series
// with the focus set a little aside. The journal of that series then holds all that its outcome rests on.
import * as v from 'valibot';
import { Steps } from '../units.ts';
import { Verdict } from './verdict.ts';

export const Transfer = v.object({
  /** The record of the finished sweep. */
  of: v.pipe(v.string(), v.minLength(1)),
  /** The limit the band runs past, or lies beyond. */
  side: v.picklist(['low', 'high']),
  /** The last value that held at its visible end; null where the light never came on. */
  visible: v.nullable(Steps),
  /** What was seen at critical focus, in order. */
  holds: v.pipe(v.array(v.object({ value: Steps, verdict: Verdict })), v.minLength(1)),
});
export type Transfer = v.InferOutput<typeof Transfer>;
