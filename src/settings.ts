// What the person has set once for every sweep: the manner of working, and how the panel speaks, listens and sounds.
import * as v from 'valibot';
import { Manner, USUAL_MANNER } from './sweep/plan.ts';

export const Settings = v.object({
  manner: Manner,
  voice: v.object({
    /** `browser`: the browser's own recogniser, only after the person said yes to what that means. */
    listen: v.picklist(['off', 'browser']),
    speak: v.boolean(),
    /** Pace of speech, 1 being the voice's own. */
    rate: v.pipe(v.number(), v.minValue(0.5), v.maxValue(2)),
  }),
  /** Tones. */
  sound: v.boolean(),
  logbook: v.optional(
    v.object({
      /** How old a measurement may be before it is due again. */
      days: v.pipe(v.number(), v.integer(), v.minValue(7), v.maxValue(3650)),
      /** Under which name this computer's last values travel through the browser's sync; null where they do not. */
      sync: v.optional(v.nullable(v.pipe(v.string(), v.minLength(1), v.maxLength(60))), null),
    }),
    { days: 365, sync: null },
  ),
});
export type Settings = v.InferOutput<typeof Settings>;

export const USUAL_SETTINGS: Settings = {
  manner: USUAL_MANNER,
  voice: { listen: 'off', speak: true, rate: 1 },
  sound: true,
  logbook: { days: 365, sync: null },
};
