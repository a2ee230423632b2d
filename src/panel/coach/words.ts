// What a person is told in the first two holds: which of the two buttons does what, what happens now, and what to press.
import type { Coached } from './coaching.ts';

export const BUTTONS = {
  title: 'Two buttons',
  camera: 'The camera\u2019s button lights the focus light: half-press and keep it.',
  panel: 'This switch only tells the panel: tap to begin, tap again if it fails.',
};

export const LIGHTS_LEAD = 'Watch for one of these in the hold:';

type Phase = Extract<Coached, { shows: 'phase' }>['phase'];

interface Step {
  readonly now: string;
  readonly press: string;
  /** Said aloud when what is being said has been said; null where nothing may be said into the hold. */
  readonly aloud: string | null;
}

export const FIRST_ALOUD = 'Tap the switch to begin. Then half-press the camera\u2019s button and keep it.';

export const STEPS: Record<Phase, Step> = {
  dialling: {
    now: 'Dial this value into the camera.',
    press: 'Then tap the switch, half-press the camera\u2019s button and keep it.',
    aloud: 'Dial it in, tap the switch, then half-press and keep it.',
  },
  holding: {
    now: 'Keep the camera\u2019s button half-pressed and watch the light.',
    press: 'Press here only if the light fails:',
    aloud: null,
  },
  judging: {
    now: 'The time is up: let the camera\u2019s button go.',
    press: 'Tap the switch if the light stayed on. Keep it down a moment if the light failed.',
    aloud: 'Tap if the light stayed on. Long press if it failed.',
  },
};
