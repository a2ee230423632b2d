// Japanese: the drawing of the rig.
import type { LightVerdict } from '../../optics/light.ts';
import type { RigWords } from '../rigWords.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';

const LIGHT: Readonly<Record<LightVerdict, string>> = { 'too dim': '暗すぎ', fine: '十分', plenty: '余裕あり' };

/** As fine as the least that may matter: a tenth of a degree, or a hundredth of one where that is all there is. */
const angle = (degrees: number): string => write.degrees(degrees, degrees < 1 ? 2 : 1);

export const words: RigWords = {
  views: { 'from the side': '横から', 'from above': '上から', 'at the target': 'ターゲット付近の拡大' },
  stands: (length, multiple, unit) => `${write.distance(length, unit)}、焦点距離の${write.number(multiple, multiple < 10 ? 1 : 0)}倍`,
  light: {
    found: (ev, verdict) => `明るさ：EV ${write.number(ev, 1)}、${LIGHT[verdict]}`,
    wanted: (least) => `明るさ：EV ${write.number(least, 1)}以上`,
  },
  square: (allowed, tilt) => (tilt === null ? `傾き${angle(allowed)}以内` : `傾き${angle(tilt)}（${angle(allowed)}以内）`),
  squareByEye: '正対は目測で可',
  prints: (field, sheets) => `図${write.millimetres(field)}、用紙${write.number(sheets)}\u2060枚`,
  depth: (front, behind, unit) =>
    behind === 'infinite'
      ? `鮮明な範囲：手前${nearTarget(front, unit)}、奥は無限`
      : `鮮明な範囲：手前${nearTarget(front, unit)}、奥${nearTarget(behind, unit)}`,
  said: (answers) => `測定環境の図。${answers.map(([, text]) => `${text}。`).join('')}`,
};
