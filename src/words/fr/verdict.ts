// French: what was seen in a hold. Read back it is said in the words that a person is taught to say for it; told of, the light
// is steady, late, flickering or dark.
import type { Word } from '../../sweep/inputs.ts';
import type { Arrows, Light, Verdict } from '../../sweep/verdict.ts';
import { taught } from '../taught.ts';

const FAILED = 'échec';

const SAID: Readonly<Record<Exclude<Light, 'untold'>, Word>> = { steady: 'solid', late: 'delayed', flicker: 'flicker', dark: 'nothing' };

export const arrowsSaid = (arrows: Arrows): string | null => (arrows === 'none' ? null : taught(arrows));

/** The light and the arrow, each in the word for it. */
export const readBack = ({ light, arrows }: Verdict): string =>
  [light === 'untold' ? FAILED : taught(SAID[light]), arrowsSaid(arrows)].filter((word) => word !== null).join(', ');

export const LIGHT: Readonly<Record<Light, string>> = { steady: 'fixe', late: 'tardif', flicker: 'clignotant', dark: 'éteint', untold: FAILED };

export const ARROWS_SEEN: Readonly<Record<Arrows, string | null>> = {
  none: null,
  left: 'flèche gauche',
  right: 'flèche droite',
  balanced: 'flèches égales',
  lopsided: 'flèches inégales',
};

/** "clignotant, flèche gauche". */
export const seen = ({ light, arrows }: Verdict): string => [LIGHT[light], ARROWS_SEEN[arrows]].filter((part) => part !== null).join(', ');
