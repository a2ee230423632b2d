// German: what was seen in a hold. Read back it is said in the words that a person is taught to say for it; told of, the light
// is stabil, verzögert, flackernd or dunkel.
import type { Arrows, Light, Verdict } from '../../sweep/verdict.ts';
import { taught } from '../taught.ts';

function lightSaid(light: Light): string {
  switch (light) {
    case 'steady':
      return taught('solid');
    case 'late':
      return taught('delayed');
    case 'flicker':
      return taught('flicker');
    case 'dark':
      return taught('nothing');
    case 'untold':
      return 'hielt nicht';
  }
}

export const arrowsSaid = (arrows: Arrows): string | null => (arrows === 'none' ? null : taught(arrows));

/** "flackern, links". */
export const readBack = ({ light, arrows }: Verdict): string => [lightSaid(light), arrowsSaid(arrows)].filter(Boolean).join(', ');

export const LIGHT: Readonly<Record<Light, string>> = {
  steady: 'stabil',
  late: 'verzögert',
  flicker: 'flackernd',
  dark: 'dunkel',
  untold: 'nicht gehalten',
};

export const ARROWS_SEEN: Readonly<Record<Arrows, string | null>> = {
  none: null,
  left: 'Pfeil links',
  right: 'Pfeil rechts',
  balanced: 'beide Pfeile gleich',
  lopsided: 'Pfeile ungleich',
};

/** "flackernd, Pfeil links". */
export const seen = ({ light, arrows }: Verdict): string => [LIGHT[light], ARROWS_SEEN[arrows]].filter(Boolean).join(', ');
