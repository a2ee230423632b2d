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
});
export type Settings = v.InferOutput<typeof Settings>;

export const USUAL_SETTINGS: Settings = {
  manner: USUAL_MANNER,
  voice: { listen: 'off', speak: true, rate: 1 },
  sound: true,
};
