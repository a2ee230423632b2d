// Spanish: the drawing of the rig.
import type { LightVerdict } from '../../optics/light.ts';
import type { RigWords } from '../rigWords.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';

const LIGHT: Readonly<Record<LightVerdict, string>> = { 'too dim': 'escasa', fine: 'suficiente', plenty: 'abundante' };

/** As fine as the least that may matter: a tenth of a degree, or a hundredth of one where that is all there is. */
const angle = (degrees: number): string => write.degrees(degrees, degrees < 1 ? 2 : 1);

export const words: RigWords = {
  views: { 'from the side': 'De lado', 'from above': 'Desde arriba', 'at the target': 'En la diana, ampliado' },
  stands: (length, multiple, unit) => {
    const digits = multiple < 10 ? 1 : 0;
    return `${write.distance(length, unit)}, ${write.count(Number(multiple.toFixed(digits)), { one: '# focal', other: '# focales' }, digits)}`;
  },
  light: {
    found: (ev, verdict) => `Luz: EV\u00a0${write.number(ev, 1)}, ${LIGHT[verdict]}`,
    wanted: (least) => `Luz: EV\u00a0${write.number(least, 1)} o más`,
  },
  square: (allowed, tilt) => (tilt === null ? `Paralela, margen ${angle(allowed)}` : `Inclinada ${angle(tilt)}, máximo ${angle(allowed)}`),
  squareByEye: 'Paralela, a ojo',
  prints: (field, sheets) => `Campo ${write.millimetres(field)}, ${write.count(sheets, { one: 'una hoja', other: '# hojas' })}`,
  depth: (front, behind, unit) =>
    behind === 'infinite'
      ? `Nítido ${nearTarget(front, unit)} delante y sin fin detrás`
      : `Nítido ${nearTarget(front, unit)} delante, ${nearTarget(behind, unit)} detrás`,
  said: (answers) => `El montaje dibujado. ${answers.map(([, text]) => `${text}.`).join(' ')}`,
};
