// German: the drawing of the rig.
import type { LightVerdict } from '../../optics/light.ts';
import type { RigWords } from '../rigWords.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';

const LIGHT: Readonly<Record<LightVerdict, string>> = { 'too dim': 'zu dunkel', fine: 'genug', plenty: 'reichlich' };

/** As fine as the least that may matter: a tenth of a degree, or a hundredth of one where that is all there is. */
const angle = (degrees: number): string => write.degrees(degrees, degrees < 1 ? 2 : 1);

export const words: RigWords = {
  views: { 'from the side': 'Von der Seite', 'from above': 'Von oben', 'at the target': 'An der Tafel, größer' },
  stands: (length, multiple, unit) =>
    `${write.distance(length, unit)}, ${write.count(Number(multiple.toFixed(multiple < 10 ? 1 : 0)), { one: '# Brennweite', other: '# Brennweiten' }, 1)}`,
  light: {
    found: (ev, verdict) => `Beleuchtung: LW\u00a0${write.number(ev, 1)}, ${LIGHT[verdict]}`,
    wanted: (least) => `Beleuchtung: ab LW\u00a0${write.number(least, 1)}`,
  },
  square: (allowed, tilt) => (tilt === null ? `Parallel auf ${angle(allowed)} genau` : `Um ${angle(tilt)} geneigt, erlaubt sind ${angle(allowed)}`),
  squareByEye: 'Nach Augenmaß',
  prints: (field, sheets) => `Feld ${write.millimetres(field)}, ${write.count(sheets, { one: 'ein Blatt', other: '# Blätter' })}`,
  depth: (front, behind, unit) =>
    behind === 'infinite'
      ? `Scharf: ${nearTarget(front, unit)} davor, unbegrenzt dahinter`
      : `Scharf: ${nearTarget(front, unit)} davor, ${nearTarget(behind, unit)} dahinter`,
  said: (answers) => `Der Aufbau, wie gezeichnet. ${answers.map(([, text]) => `${text}.`).join(' ')}`,
};
