// Japanese: what came out of a sweep, short for the ear and whole for the eye.
import type { BandOutcome, CarriedOutcome, Outcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { sayCorrection } from '../../hearing/languages/ja/sayCorrection.ts';
import type { InWords } from '../inWords.ts';
import { sentences } from './sentence.ts';
import { write } from './write.ts';

export function outcome(found: Outcome): InWords {
  switch (found.found) {
    case 'band':
      return band(found);
    case 'past the limit':
      return pastTheLimit(found);
    case 'carried over':
      return carriedOver(found);
    case 'beyond the scale':
      return BEYOND[found.side];
    case 'nothing':
      return { spoken: '安定する値がありませんでした。', written: 'どの値でもランプが安定しなかったため、設定する値はありません。' };
  }
}

const BEYOND = {
  above: { spoken: '安定域は補正範囲より上です。', written: '安定域全体が補正範囲より上にあり、補正では届きません。' },
  below: { spoken: '安定域は補正範囲より下です。', written: '安定域全体が補正範囲より下にあり、補正では届きません。' },
} as const;

function band({ low, high, centre, chosen, other, within, ends }: BandOutcome): InWords {
  const spoken = sentences(sayCorrection(chosen));
  const enter = `${writeSteps(chosen)}を設定してください。中心から±1ステップ以内の確率は${write.chance(within)}です。`;
  if (ends === 'believed') return { spoken, written: `${enter}安定域の少なくとも一方の端は確認していません。` };
  const from = low === high ? `安定域は${writeSteps(low)}だけです。` : `安定域は${writeSteps(low)}〜${writeSteps(high)}です。`;
  if (other === null) return { spoken, written: `${enter}${from}` };
  return { spoken, written: `${enter}${from}中心は${write.signed(centre, 1)}で、2つの値の間にあります。${writeSteps(other)}でも同じです。` };
}

function pastTheLimit({ side, visible, bound }: Extract<Outcome, { found: 'past the limit' }>): InWords {
  if (visible === null || bound === null) {
    return { spoken: 'どの値でも安定しています。', written: 'どの値でもランプが安定しているため、中心を求められません。' };
  }
  const limit = 2 * bound - visible;
  const least = side === 'high' ? `${write.signed(bound, 1)}以上` : `${write.signed(bound, 1)}以下`;
  return {
    spoken: `安定域は${sayCorrection(limit)}の先まで続いています。`,
    written: `安定域の一方の端は${writeSteps(visible)}です。もう一方は、限界の${writeSteps(limit)}の先にあります。中心は${least}です。`,
  };
}

function carriedOver({ visible, centre, interval, chosen, inside, service, ends }: CarriedOutcome): InWords {
  const from = write.signed(Math.floor(2 * interval.from) / 2, 1);
  const to = write.signed(Math.ceil(2 * interval.to) / 2, 1);
  const measured = [
    visible === null ? 'ピントが合った状態では、安定する値がありませんでした。' : `ピントが合った状態では、安定域の一方の端は${writeSteps(visible)}です。`,
    `ピントをずらして測った幅の半分から、中心は約${write.signed(centre, 1)}（95%区間${from}〜${to}）と推定されます。`,
    ...(ends === 'believed' ? ['その幅の少なくとも一方の端は確認していません。'] : []),
  ].join('');
  if (!service) return { spoken: sentences(sayCorrection(chosen)), written: `設定する値は${writeSteps(chosen)}です。${measured}` };
  const still = inside
    ? `最も近い補正値${writeSteps(chosen)}ではランプが安定しますが、ボディとレンズはサービスでの点検が必要です。`
    : '補正では届かないため、ボディとレンズはサービスでの点検が必要です。';
  return { spoken: `中心は${sayCorrection(chosen)}の先です。サービスでの点検が必要です。`, written: `${measured}${still}` };
}
