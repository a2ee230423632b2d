// A value without a sweep: measured on paper, read off the camera, or brought in from a table. From both ends of a
// band the centre follows by the taught rule (common practice, no source); where the count is even there are two
// middles, and the one nearer zero is offered first.
import * as v from 'valibot';
import { isOnScale, type Scale } from '../sweep/scale.ts';
import { Subject } from '../sweep/plan.ts';
import { failed, got, type Result } from '../result.ts';
import { steps } from '../units.ts';
import { Moment, Steps } from '../storedUnits.ts';
import { Conditions } from './conditions.ts';
import { ENDS_TURNED } from './unfit.ts';

/** What is known: both ends of the band and the value taken, or only the value in force. */
const Finding = v.variant('known', [
  v.pipe(
    v.object({ known: v.literal('band'), low: Steps, high: Steps, chosen: Steps }),
    v.check(({ low, high }) => low <= high, ENDS_TURNED),
  ),
  v.object({ known: v.literal('value'), chosen: Steps }),
]);

export const HandRecord = v.object({
  id: v.pipe(v.string(), v.minLength(1)),
  at: Moment,
  subject: Subject,
  source: v.picklist(['by hand', 'from a table', 'from another computer']),
  finding: Finding,
  conditions: Conditions,
});
export type HandRecord = v.InferOutput<typeof HandRecord>;

/** The middle of a band: one value, or two equally near it, the one nearer zero first. */
export interface BandMiddle {
  readonly centre: number;
  readonly choices: readonly [Steps] | readonly [Steps, Steps];
}

/** What keeps a value that was typed in from being kept. */
export type HandFault = { readonly is: 'ends off the scale' | 'off the scale'; readonly scale: Scale } | { readonly is: 'outside the ends' };

/** Finds the middle of a band whose ends were typed in, in either order. */
export function middleOf(scale: Scale, one: number, other: number): Result<BandMiddle, HandFault> {
  if (![one, other].every((end) => isOnScale(scale, end))) return failed({ is: 'ends off the scale', scale });
  const centre = (one + other) / 2;
  if (isOnScale(scale, centre)) return got({ centre, choices: [centre] });
  const down = steps(centre - scale.step / 2);
  const up = steps(centre + scale.step / 2);
  return got({ centre, choices: Math.abs(up) < Math.abs(down) ? [up, down] : [down, up] });
}
