// What stands in the camera. A sweep only recommends; the person says when they have entered a value, and every entry
// is kept, so that the values a situation has had can be read in order.
import * as v from 'valibot';
import { Moment, Steps } from '../storedUnits.ts';
import { Subject } from '../sweep/plan.ts';
import { Conditions } from './conditions.ts';

export const Entry = v.object({
  id: v.pipe(v.string(), v.minLength(1)),
  at: Moment,
  /** Names, focal length and distance as they stood when it was entered. */
  subject: Subject,
  value: Steps,
  /** The record it rests on; null when it was entered without one. */
  record: v.nullable(v.string()),
  conditions: Conditions,
});
export type Entry = v.InferOutput<typeof Entry>;
