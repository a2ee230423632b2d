// Spanish: what was seen in a hold. Read back it is said in the words that a person is taught to say for it; told of, the light
// is steady, late, flickering or dark.
import type { Arrows, Light, Verdict } from '../../sweep/verdict.ts';
import { taught } from '../taught.ts';

const SAID = { steady: 'solid', late: 'delayed', flicker: 'flicker', dark: 'nothing' } as const;

const lightSaid = (light: Light): string => (light === 'untold' ? 'falló' : taught(SAID[light]));

export const arrowsSaid = (arrows: Arrows): string | null => (arrows === 'none' ? null : taught(arrows));

/** The light, then the arrows, in taught words. */
export const readBack = ({ light, arrows }: Verdict): string => [lightSaid(light), arrowsSaid(arrows)].filter(Boolean).join(', ');

export const LIGHT: Readonly<Record<Light, string>> = {
  steady: 'fija',
  late: 'tardía',
  flicker: 'parpadeante',
  dark: 'apagada',
  untold: 'fallida',
};

export const ARROWS_SEEN: Readonly<Record<Arrows, string | null>> = {
  none: null,
  left: 'flecha izquierda',
  right: 'flecha derecha',
  balanced: 'las dos flechas, iguales',
  lopsided: 'flechas desiguales',
};

/** "parpadeante, flecha izquierda". */
export const seen = ({ light, arrows }: Verdict): string => [LIGHT[light], ARROWS_SEEN[arrows]].filter(Boolean).join(', ');
