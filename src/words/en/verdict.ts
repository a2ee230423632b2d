// English: what was seen in a hold. Read back it is said in the words that a person is taught to say for it; told of, the light
// is steady, late, flickering or dark.
import type { Arrows, Light, Verdict } from '../../sweep/verdict.ts';

const SAID: Readonly<Record<Light, string>> = { steady: 'solid', late: 'delayed', flicker: 'flicker', dark: 'nothing', untold: 'failed' };

export const ARROWS_SAID: Readonly<Record<Arrows, string | null>> = { none: null, left: 'left', right: 'right', balanced: 'balanced', lopsided: 'lopsided' };

/** "flicker, left". */
export const readBack = ({ light, arrows }: Verdict): string => [SAID[light], ARROWS_SAID[arrows]].filter(Boolean).join(', ');

export const LIGHT: Readonly<Record<Light, string>> = { steady: 'steady', late: 'late', flicker: 'flickering', dark: 'dark', untold: 'failed' };

export const ARROWS_SEEN: Readonly<Record<Arrows, string | null>> = {
  none: null,
  left: 'left arrow',
  right: 'right arrow',
  balanced: 'both arrows, even',
  lopsided: 'uneven arrows',
};

/** "flickering, left arrow". */
export const seen = ({ light, arrows }: Verdict): string => [LIGHT[light], ARROWS_SEEN[arrows]].filter(Boolean).join(', ');
