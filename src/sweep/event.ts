// The journal of a sweep: everything the person or the clock did, in order. It is the truth; the state is what these
// events add up to. What is stored on disk is exactly this, so every event is also a schema.
import * as v from 'valibot';
import { Moment, Steps } from '../storedUnits.ts';
import { Plan } from './plan.ts';
import { Arrows, Verdict } from './storedVerdict.ts';

const at = Moment;
/** The ways a person can tell the panel something, all equal; `count` is the panel's own count-in. */
export const By = v.picklist(['voice', 'key', 'switch', 'pointer', 'count']);
export type By = v.InferOutput<typeof By>;
const by = By;
/** The words as they were heard, where the event came by voice. */
const heard = v.nullable(v.string());

export const SweepEvent = v.variant('did', [
  v.object({ did: v.literal('opened'), at, id: v.string(), plan: Plan }),
  /** The half-press began. */
  v.object({ did: v.literal('began'), at, value: Steps, by }),
  /** The full hold time has run. */
  v.object({ did: v.literal('ran'), at }),
  v.object({ did: v.literal('judged'), at, verdict: Verdict, by, heard }),
  /** The arrows of the hold just judged, told after the light. */
  v.object({ did: v.literal('amended'), at, arrows: Arrows, by, heard }),
  /** Nobody answered after the end tone. */
  v.object({ did: v.literal('unanswered'), at }),
  /** The person set another value than the one suggested. */
  v.object({ did: v.literal('chose'), at, value: Steps, by }),
  /** The person would rather not hold this value now. */
  v.object({ did: v.literal('skipped'), at, by }),
  v.object({ did: v.literal('undid'), at, by }),
  v.object({ did: v.literal('paused'), at, by }),
  v.object({ did: v.literal('resumed'), at, by }),
  /** A hold was cut off from outside: the panel closed, the computer slept. */
  v.object({ did: v.literal('cut off'), at }),
  /** Focus was looked at in live view, after the panel asked. */
  v.object({ did: v.literal('checked'), at, focus: v.picklist(['unmoved', 'moved']), by }),
  /** The person goes on although the finish was offered. */
  v.object({ did: v.literal('went on'), at, by }),
  v.object({ did: v.literal('finished'), at, by }),
  /** Something was heard, and this is what became of it. It moves nothing; it is kept beside the hold it was heard in. */
  v.object({ did: v.literal('heard'), at, guesses: v.array(v.string()), became: v.picklist(['taken', 'asked', 'unclear', 'other']) }),
]);
export type SweepEvent = v.InferOutput<typeof SweepEvent>;
export type Opened = Extract<SweepEvent, { did: 'opened' }>;

/** A journal as it is stored: the opening first, then whatever followed. */
export const Journal = v.pipe(
  v.array(SweepEvent),
  v.check((events) => events[0]?.did === 'opened', 'A journal must begin with the opening of its sweep.'),
);
export type Journal = v.InferOutput<typeof Journal>;
