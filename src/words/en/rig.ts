// English: the drawing of the rig.
import type { LightVerdict } from '../../optics/light.ts';
import type { RigWords } from '../rigWords.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';

const LIGHT: Readonly<Record<LightVerdict, string>> = { 'too dim': 'too dim', fine: 'enough', plenty: 'plenty' };

/** As fine as the least that may matter: a tenth of a degree, or a hundredth of one where that is all there is. */
const angle = (degrees: number): string => write.degrees(degrees, degrees < 1 ? 2 : 1);

export const words: RigWords = {
  views: { 'from the side': 'From the side', 'from above': 'From above', 'at the target': 'At the target, larger' },
  stands: (length, multiple, unit) =>
    `${write.distance(length, unit)}, ${write.count(Number(multiple.toFixed(multiple < 10 ? 1 : 0)), { one: '# focal length', other: '# focal lengths' }, 1)}`,
  light: {
    found: (ev, verdict) => `Light: EV ${write.number(ev, 1)}, ${LIGHT[verdict]}`,
    wanted: (least) => `Light: EV ${write.number(least, 1)} or more`,
  },
  square: (allowed, tilt) => (tilt === null ? `Square to within ${angle(allowed)}` : `Tilted ${angle(tilt)} of at most ${angle(allowed)}`),
  squareByEye: 'Square by eye',
  prints: (field, sheets) => `Field ${write.millimetres(field)}, ${write.count(sheets, { one: 'one sheet', other: '# sheets' })}`,
  depth: (front, behind, unit) =>
    behind === 'infinite'
      ? `Sharp ${nearTarget(front, unit)} in front, and without end behind`
      : `Sharp ${nearTarget(front, unit)} in front, ${nearTarget(behind, unit)} behind`,
  said: (answers) => `The rig as drawn. ${answers.map(([, text]) => `${text}.`).join(' ')}`,
};
