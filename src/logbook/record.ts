// One finished sweep as the logbook keeps it: what came out, and the whole journal behind it, so that every hold can be
// looked at again long afterwards.
import * as v from 'valibot';
import { Moment } from '../storedUnits.ts';
import { Journal } from '../sweep/event.ts';
import { Outcome } from '../sweep/end/found.ts';
import { Subject } from '../sweep/plan.ts';
import { Conditions } from './conditions.ts';

export const LogRecord = v.object({
  id: v.pipe(v.string(), v.minLength(1)),
  finished: Moment,
  /** Measured on the practice camera: kept apart from what is entered in a real body. */
  practice: v.boolean(),
  subject: Subject,
  outcome: Outcome,
  journal: Journal,
  /** Told by the person, then or later; absent where nobody did. */
  conditions: v.exactOptional(Conditions),
});
export type LogRecord = v.InferOutput<typeof LogRecord>;
