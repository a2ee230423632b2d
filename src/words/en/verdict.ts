// English: what was seen in a hold. Read back it is said in the words that a person is taught to say for it; told of, the light
// is steady, late, flickering or dark.
import type { Word } from '../../sweep/inputs.ts';
import type { Arrows, Light, Verdict } from '../../sweep/verdict.ts';
import { taught } from '../taught.ts';

const SAID = { steady: 'solid', late: 'delayed', flicker: 'flicker', dark: 'nothing' } as const satisfies Record<Exclude<Light, 'untold'>, Word>;

const lightSaid = (light: Light): string => (light === 'untold' ? 'failed' : taught(SAID[light]));

export const arrowsSaid = (arrows: Arrows): string | null => (arrows === 'none' ? null : taught(arrows));

/** "flicker, left". */
export const readBack = ({ light, arrows }: Verdict): string => [lightSaid(light), arrowsSaid(arrows)].filter(Boolean).join(', ');

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
