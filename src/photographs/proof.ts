// What is kept of photographs: pure figures, no pixels. One picture, a check of the value entered, or a bracket of corrections. Lengths are
// millimetres at the target from it to the focused plane, positive behind it; a correction and what follows from it are in steps.
import * as v from 'valibot';
import { Moment, Steps } from '../storedUnits.ts';

/** A damaged file may hold a number that nothing measures. */
const Finite = v.pipe(v.number(), v.finite());
const Length = v.pipe(Finite, v.minValue(0));
const Count = v.pipe(v.number(), v.integer(), v.minValue(0));

/** A number as it was measured, with its 95 % interval. */
const Measured = v.object({ value: Finite, low: Finite, high: Finite });

/** The depth of field to either side of the target. */
const Depth = v.object({ front: Length, behind: v.union([Length, v.literal('infinite')]) });

/** When the first of the pictures was taken, if the camera wrote it. */
const taken = v.nullable(Moment);

const OnePicture = v.object({
  is: v.literal('one'),
  taken,
  error: Measured,
  depth: Depth,
  sharp: v.picklist(['sharp', 'not sharp', 'not sure']),
});

const Check = v.object({
  is: v.literal('check'),
  taken,
  /** The one the body was set to. */
  correction: Steps,
  /** Shots with autofocus; the one focused in live view is not counted. */
  shots: Count,
  /** Was there one focused in live view? */
  reference: v.boolean(),
  bias: Measured,
  /** Standard deviation of shots thrown off the same way. */
  repeatability: Length,
  /** Mean of the shots thrown off to near less mean of those to far; null where one way is missing. */
  nearLessFar: v.nullable(Measured),
  depth: Depth,
  verdict: v.variant('is', [
    v.object({ is: v.literal('confirmed') }),
    v.object({ is: v.literal('shifted'), lies: v.picklist(['in front', 'behind']) }),
    v.object({ is: v.literal('not enough'), more: Count }),
  ]),
});

/** Beside the centre of the band that the light gave, in steps. `difference` is the bracket's less the band's. */
const Joined = v.variant('is', [
  v.object({ is: v.literal('agree'), band: Measured, difference: Measured, joint: Measured }),
  v.object({ is: v.literal('differ'), band: Measured, difference: Measured }),
]);

const Bracket = v.object({
  is: v.literal('bracket'),
  taken,
  shots: v.array(v.object({ correction: Steps, error: Measured })),
  /** Focused in live view; null where there was none. */
  reference: v.nullable(Measured),
  /** Millimetres at the target for one step. */
  step: Measured,
  /** The correction that puts focus on the target; it may lie off the scale. */
  centre: Measured,
  /** Standard deviation of one shot about the line. */
  scatter: Length,
  /** The line at a correction of 0. */
  atZero: Finite,
  /** Null where the situation had no band. */
  joined: v.nullable(Joined),
});

export const Proof = v.variant('is', [OnePicture, Check, Bracket]);
export type Proof = v.InferOutput<typeof Proof>;
