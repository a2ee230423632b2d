// What is fixed when a sweep opens: whose correction is sought, on which scale, and how the person wants to work.
// It is stored whole with the journal, so a record can be read long after kit and settings have changed.
import * as v from 'valibot';
import { Millimetres, Steps, seconds, type Seconds } from '../units.ts';
import { Care } from './care.ts';
import { Memory } from './memory.ts';
import { Oddity } from './oddity.ts';
import { Scale } from './scale.ts';
import { StoredBench } from './storedBench.ts';
import { Transfer } from './widthTransfer.ts';
import { ArrowDisplay } from './verdict.ts';

const secondsFrom = (least: number, most: number) =>
  v.pipe(v.number(), v.minValue(least), v.maxValue(most), v.brand('Seconds'));

/** `fewest`: the value that tells most for the time. `outward`: one value at a time, to watch the light change. */
export const Order = v.picklist(['fewest', 'outward']);
export type Order = v.InferOutput<typeof Order>;

/** `own`: a press or a word begins each hold. `counted`: the panel counts in after the time to dial. */
export const Pace = v.variant('set', [
  v.object({ set: v.literal('own') }),
  v.object({ set: v.literal('counted'), toDial: secondsFrom(2, 30) }),
]);
export type Pace = v.InferOutput<typeof Pace>;

/** The hold time in use: five seconds is common practice, no source; three to fifteen may be set. */
const HoldTime = secondsFrom(3, 15);
export const USUAL_HOLD_TIME: Seconds = seconds(5);

/** How the person wants to work; the same for every sweep until they change it. */
export const Manner = v.object({ care: Care, order: Order, pace: Pace, holdTime: HoldTime });
export type Manner = v.InferOutput<typeof Manner>;

export const USUAL_MANNER: Manner = { care: 'standard', order: 'fewest', pace: { set: 'own' }, holdTime: USUAL_HOLD_TIME };

/** Whose correction this is, in the person's own words, as they stood when the sweep opened. */
export const Subject = v.object({
  situation: v.string(),
  body: v.string(),
  lens: v.string(),
  focalLength: Millimetres,
  distance: Millimetres,
});
export type Subject = v.InferOutput<typeof Subject>;

/** A person who spoils no hold in two hundred, or more than one in ten, is not believed. */
const Lapse = v.pipe(v.number(), v.minValue(0.005), v.maxValue(0.1));

export const Plan = v.object({
  subject: Subject,
  scale: Scale,
  arrows: ArrowDisplay,
  manner: Manner,
  memory: Memory,
  /** The person's own share of spoilt holds, measured in training; without it the usual one counts. */
  lapse: v.optional(Lapse),
  /** The value the body is set to when the sweep opens. */
  start: Steps,
  /** Null with real kit; with the practice camera, the seed that its band and its light come from. */
  practice: v.nullable(
    v.object({
      seed: v.pipe(v.number(), v.integer(), v.minValue(0)),
      /** To meet a band that no correction reaches whole. */
      band: v.optional(v.literal('past the limit')),
      /** In a width transfer: how far its ring is turned, in corrections. */
      shift: v.optional(v.pipe(v.number(), v.integer())),
      /** What is wrong with it. */
      oddity: v.exactOptional(Oddity),
    }),
  ),
  /** Where this is the second series of a width transfer: the finished sweep that it belongs to. */
  transfer: v.optional(Transfer),
  /** How the rig was set up, where the person walked through it. */
  bench: v.optional(StoredBench),
});
export type Plan = v.InferOutput<typeof Plan>;
