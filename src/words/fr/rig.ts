// French: the drawing of the rig.
import type { LightVerdict } from '../../optics/light.ts';
import type { RigWords } from '../rigWords.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';

const LIGHT: Readonly<Record<LightVerdict, string>> = { 'too dim': 'trop sombre', fine: 'suffisante', plenty: 'abondante' };

/** As fine as the least that may matter: a tenth of a degree, or a hundredth of one where that is all there is. */
const angle = (degrees: number): string => write.degrees(degrees, degrees < 1 ? 2 : 1);

export const words: RigWords = {
  views: { 'from the side': 'Vue de côté', 'from above': 'Vue de dessus', 'at the target': 'À la mire, agrandie' },
  stands: (length, multiple, unit) => `${write.distance(length, unit)}, ${write.number(multiple, multiple < 10 ? 1 : 0)} fois la focale`,
  light: {
    found: (ev, verdict) => `Lumière : EV ${write.number(ev, 1)}, ${LIGHT[verdict]}`,
    wanted: (least) => `Lumière : EV ${write.number(least, 1)} ou plus`,
  },
  square: (allowed, tilt) => (tilt === null ? `Parallèle à ${angle(allowed)} près` : `Inclinaison ${angle(tilt)}, au plus ${angle(allowed)}`),
  squareByEye: 'Parallèle à vue d’œil',
  prints: (field, sheets) => `Champ ${write.millimetres(field)}, ${write.count(sheets, { one: 'une feuille', other: '# feuilles' })}`,
  depth: (front, behind, unit) =>
    behind === 'infinite'
      ? `Net sur ${nearTarget(front, unit)} devant, et jusqu’à l’infini derrière`
      : `Net sur ${nearTarget(front, unit)} devant, ${nearTarget(behind, unit)} derrière`,
  said: (answers) => `Le banc tel que dessiné. ${answers.map(([, text]) => `${text}.`).join(' ')}`,
};
