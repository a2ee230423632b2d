// Japanese: why a value is held next, as it follows the value. 「+6：+3（安定）と+9（点灯なし）の中間」
import type { Landmark } from '../../sweep/next/reason.ts';
import type { Suggestion } from '../../sweep/next/suggestion.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { LIGHT } from './verdict.ts';
import { write } from './write.ts';

export function reason({ value, reason: why }: Suggestion): string {
  switch (why.because) {
    case 'start':
      return 'まず、最も有力な値から';
    case 'remembered': {
      const when = write.monthAndYear(why.from.at);
      return why.from.of === 'situation' ? `${when}に中心だった値` : `別の焦点距離や距離で、${when}に中心だった値の近く`;
    }
    case 'between': {
      const isHalfway = why.below.value + why.above.value === 2 * value;
      return `${landmark(why.below)}と${landmark(why.above)}の${isHalfway ? '中間' : '間'}`;
    }
    case 'beyond':
      return `${landmark(why.of)}より${why.side === 'above' ? '上' : '下'}`;
    case 'surer':
      return why.of.light === 'untold' ? '前回は不安定だったため、もう一度確認' : `前回は${lightOf(why.of)}だったため、もう一度確認`;
    case 'again':
      return '前回の判定が予想外だったため、もう一度確認';
    case 'end':
      return END[why.part][why.side];
    case 'unmoved':
      return '最初の半押しからピントが動いていないかを確認';
    case 'proof':
      return 'まだ半押ししていない設定候補';
    case 'doubted':
      return '判定がほかと合わないため、もう一度確認';
    case 'yours':
      return '自分で選んだ値';
  }
}

const END = {
  last: { low: '安定域の下端を確認', high: '安定域の上端を確認' },
  next: { low: '安定域のすぐ下を確認', high: '安定域のすぐ上を確認' },
} as const;

/** The same as it is said before the first hold; null where there is nothing to add to the value. */
export function startAloud({ reason: why }: Suggestion): string | null {
  if (why.because !== 'remembered') return null;
  const when = write.month(why.from.at);
  return why.from.of === 'situation' ? `${when}の中心です` : `${when}の中心の近くです`;
}

const landmark = (held: Landmark): string => `${writeSteps(held.value)}（${lightOf(held)}）`;

/** A steady light that an arrow told against is told with its arrow, or it would contradict how it counts. */
const lightOf = ({ light, counts }: Landmark): string => (light === 'steady' && counts === 'out' ? '安定、矢印は片方' : LIGHT[light]);
