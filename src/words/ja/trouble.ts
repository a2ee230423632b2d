// Japanese: what may be wrong beside the correction.
import { writeSteps } from '../../sweep/scale.ts';
import type { ArrowsContradict, Trouble } from '../../sweep/trouble/trouble.ts';
import type { Named, TroubleWords } from '../troubleWords.ts';
import { CHECKS } from './checks.ts';
import { drifted } from './drift.ts';
import { write } from './write.ts';

const NAMES: Readonly<Record<Named['trouble'], string>> = {
  'flickers everywhere': 'どの値でもちらつく',
  'never lights': 'どの値でも点灯しない',
  'lights everywhere': 'どの値でも安定',
  'hole in the band': '安定域の途切れ',
  'arrows contradict the lights': '矢印とランプの食い違い',
  'focus moved': 'ピントが動いた',
  'verdicts misjudged': 'ほかと合わない判定',
  'band drifts': '安定域の変動',
  play: '合わせる向きの影響',
  'sweeps differ': '測定結果の食い違い',
};

function seen(found: Trouble): string {
  switch (found.trouble) {
    case 'flickers everywhere':
      return 'どの値でもランプが安定せず、多くはちらつきます。';
    case 'never lights':
      return 'どの値でもランプが点灯しません。';
    case 'lights everywhere':
      return '補正範囲の下限から上限まで、どの値でもランプが安定しています。';
    case 'hole in the band':
      return found.from === found.to
        ? `${writeSteps(found.from)}でランプが安定しませんが、その両側では安定しています。中心の値は信頼できません。`
        : `${writeSteps(found.from)}〜${writeSteps(found.to)}でランプが安定しませんが、その両側では安定しています。中心の値は信頼できません。`;
    case 'arrows contradict the lights':
      return ARROWS[found.how];
    case 'verdicts misjudged':
      return `${write.list(found.values.map(writeSteps))}での判定が、ほかの判定と合いません。数には入れません。`;
    case 'band drifts':
      return `安定域が1分間に約${inSteps(Math.abs(found.rate))}動いています。中心は現在の位置です。`;
    case 'play':
      return `値を上げて合わせたときと下げて合わせたときで、安定域が約${inSteps(2 * found.size)}ずれます。中心は両者の中間です。`;
    case 'focus moved':
      return found.seen ? 'ライブビューで、ピントが動いていました。' : drifted(found);
  }
}

const ARROWS: Readonly<Record<ArrowsContradict['how'], string>> = {
  'turned round': '矢印の向きが、機材で指定したこのボディの向きと逆です。',
  'turned midway': '矢印の向きが、途中で逆になりました。',
  'by chance': '矢印の向きが、ランプと関係なく変わります。',
};

function evidence(found: Named): string {
  switch (found.trouble) {
    case 'flickers everywhere':
    case 'never lights':
    case 'lights everywhere': {
      const alike =
        found.alike === found.of
          ? `${write.number(found.of)}個の値すべてで、見え方が同じでした。`
          : `${write.number(found.of)}個の値のうち${write.number(found.alike)}個で、見え方が同じでした。`;
      return `${alike}安定域がない見込みは、ある見込みの${times(found)}です。`;
    }
    case 'hole in the band':
      return `途切れがある見込みは、ない見込みの${times(found)}です。`;
    case 'arrows contradict the lights':
      return `矢印が機材の指定と違う見込みは、指定どおりの見込みの${times(found)}です。`;
    case 'verdicts misjudged':
      return `見誤った見込みは、正しかった見込みの${times(found)}です。`;
    case 'band drifts':
      return `安定域が動いている見込みは、動いていない見込みの${times(found)}です。`;
    case 'play':
      return `向きで結果が変わる見込みは、変わらない見込みの${times(found)}です。`;
    case 'focus moved':
      return `動いた見込みは、動いていない見込みの${times(found)}です。動いたのは、おそらく${write.number(found.afterHold)}回目の半押しのあとです。`;
    case 'sweeps differ':
      return `差は${inSteps(found.apart)}です。偶然で説明できるのは${inSteps(found.allowed)}まで（信頼度${write.percent(0.95)}）。食い違っている見込みは、一致している見込みの${times(found)}です。`;
  }
}

/** Odds beyond this say no more to a person. */
const MOST = 1000;
const times = ({ bayesFactor }: { readonly bayesFactor: number }): string =>
  bayesFactor > MOST ? `${write.number(MOST)}倍以上` : `${write.number(bayesFactor)}倍`;

const inSteps = (count: number): string => `${write.number(count, 1)}ステップ`;

export const words: TroubleWords = {
  name: (found) => (found.trouble === 'focus moved' && !found.seen ? 'ピントが動いた？' : NAMES[found.trouble]),
  seen,
  evidence,
  checks: CHECKS,
  toCheck: {
    open: '確認項目',
    title: '確認項目（可能性の高い\u2060順）',
    figures: '数値',
    manual: 'カメラの説明書と異なる点は、説明書に従ってください。',
  },
};
