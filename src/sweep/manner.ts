// How the person wants to work: how carefully, in which order, at which pace, and how long a hold lasts.
import * as v from 'valibot';
import { Care } from './care.ts';

const secondsFrom = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most), v.brand('Seconds'));

/** `fewest`: the value that tells most for the time. `outward`: one value at a time, to watch the light change. */
export const Order = v.picklist(['fewest', 'outward']);
export type Order = v.InferOutput<typeof Order>;

/** `own`: a press or a word begins each hold. `counted`: the panel counts in after the time to dial. */
export const Pace = v.variant('set', [v.object({ set: v.literal('own') }), v.object({ set: v.literal('counted'), toDial: secondsFrom(2, 30) })]);
export type Pace = v.InferOutput<typeof Pace>;

/** Three to fifteen seconds may be set. */
const HoldTime = secondsFrom(3, 15);

/** How the person wants to work; the same for every sweep until they change it. */
export const Manner = v.object({ care: Care, order: Order, pace: Pace, holdTime: HoldTime });
export type Manner = v.InferOutput<typeof Manner>;
