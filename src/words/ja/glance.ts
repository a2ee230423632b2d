// Japanese: all lenses of a body at one look.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { GlanceWords } from '../glanceWords.ts';
import { between } from './focusFell.ts';
import { together } from './sentence.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

function measuredAs({ found, low, high, centre, interval }: Measured): readonly (string | false)[] {
  if (found === 'nothing') return ['安定域は見つかりませんでした。'];
  if (found === 'beyond the scale') return ['中心は補正範囲外です。'];
  const lies = interval && between(interval.from, interval.to);
  return [
    low !== null && high !== null && `安定域${writeSteps(low)}〜${writeSteps(high)}。`,
    centre !== null && `中心${write.signed(centre, 1)}${lies ? `（95%区間${lies}）` : ''}。`,
    centre === null && lies !== null && `中心の95%区間${lies}。`,
  ];
}

export const words: GlanceWords = {
  title: 'レンズ一覧',
  legend: '棒：安定域。点：中心と95%区間。四角：カメラの設定値。',
  more: (count) => `${write.number(count)}本すべて表示`,
  place,
  strip: ({ measured, entered }) =>
    together(...(measured ? measuredAs(measured) : ['未測定です。']), entered !== null && `カメラの設定値は${writeSteps(entered.value)}です。`),
};
