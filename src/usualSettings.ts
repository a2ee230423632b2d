// The settings of a person who has set nothing. Apart from their schema, which the panel reads after it is drawn.
import type { Settings } from './settings.ts';
import { USUAL_MANNER } from './sweep/usualManner.ts';

export const USUAL_SETTINGS: Settings = {
  manner: USUAL_MANNER,
  voice: { listen: 'off', wish: 'none', open: 'always', learn: false, speak: true, rate: 1, voice: '' },
  sound: true,
  loudness: 1,
  soundChecked: false,
  logbook: { days: 365, sync: null, remind: true, putOff: null },
  training: { rounds: [], own: false },
  coached: 0,
  language: { screens: 'browser', voice: 'screens', distances: 'country' },
  look: { theme: 'system', far: false },
};
