// Japanese: what came out of a sweep and what to do about it.
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { line } from '../line.ts';
import type { ResultWords } from '../resultWords.ts';
import { between } from './focusFell.ts';
import { factRevealed } from './revealed.ts';
import { write } from './write.ts';

const visible = (end: Steps | null): string => (end === null ? '安定する値なし' : `${writeSteps(end)}から限界まで安定`);

function service({ chosen, centre, inside }: CarriedOutcome): string {
  const past = `中心は約${write.signed(centre, 1)}で、このボディの限界の${writeSteps(chosen)}を超えています。`;
  return inside ? `${past}限界の値でもランプは安定します。` : `${past}どの補正値でもランプは安定しません。`;
}

const FOCUS = '絞り開放のライブビューを拡大してピントを合わせ直し、リングに触れずにレンズをMFに切り替えてください。';
const OTHER = '全レンズ共通の補正など、ほかの補正がボディに設定されていないことを確かめてください。';
const SERVICE = 'それでも同じ結果なら、ボディとレンズをメーカーのサービスに出してください。';

export const words: ResultWords = {
  region: '結果',
  placed: (found, within) => `意図して${writeSteps(found)}から移した値（元の値が±1ステップ以内の確率${write.chance(within)}）`,
  between: (value, other) => `中心は${writeSteps(value)}と${writeSteps(other)}の間にあり、どちらとも決まりません。0に近いのは${writeSteps(value)}です。`,
  headline: {
    'past the limit': '限界の先',
    'beyond the scale': '補正範囲外',
    nothing: '安定なし',
    'no hold': '半押しなし',
    service: '要点検',
  },
  noHold: '半押しをしていないため、設定する値がありません。',
  service,
  facts: {
    centre: '中心',
    place: (at) => write.signed(at, 1),
    band: '安定域',
    range: (low, high) => (low === high ? writeSteps(low) : `${writeSteps(low)}〜${writeSteps(high)}`),
    endsNotSeen: '一部の端は未確認',
    seenInFocus: 'ピントが合った状態',
    visible,
    halfWidth: '幅の半分',
    width: (half, from, to) => `${write.number(half, 1)}（${write.number(from, 1)}〜${write.number(to, 1)}）`,
    figures: '数値',
    interval: `${write.percent(0.95)}区間`,
    within: between,
  },
  drawing: {
    said: (outcome, { min, max }) =>
      `補正範囲${writeSteps(min)}〜${writeSteps(max)}：${visible(outcome.visible)}、中心は約${write.signed(outcome.centre, 1)}。`,
    held: '安定',
    beyond: '限界の先',
    lies: '安定域の位置',
    centre: `中心、${write.percent(0.95)}`,
  },
  holds: {
    aside: 'ピントをずらした状態での半押し：',
    made: (count, time) => line([`半押し${write.number(count)}回`, write.duration(time)]),
    spent: (count) => `ピントが動く前の半押し${write.number(count)}回は数えません。`,
  },
  next: {
    title: '次にすること',
    enter: (value) =>
      `このレンズの値として、${writeSteps(value)}をカメラに設定し、レンズごとの補正がオンになっていることを確かめてください。そのあと設定済みにします。`,
    enterMeanwhile: (value) => `サービスに出すまでは、このレンズの値として${writeSteps(value)}をカメラに設定してください。そのあと設定済みにします。`,
    marked: (value) => `${writeSteps(value)}は「カメラに設定済み」です。`,
    check: '写真で検証してください。毎回、ピントを近側と遠側へ交互に外してから、ファインダーのAFで6枚撮り、ライブビューでピントを合わせた1枚と比べます。',
    photographs: '写真で検証',
    focusAgain: 'ライブビューで厳密にピントを合わせ直してください。リングはまだずらしたままです。',
    service: '修理先用のページを、メーカー公認のサービスに見せてください。レンズやボディを分解しないでください。自分で調整すると悪化することがあります。',
    mark: '設定済みにする',
    lens: '次のレンズ',
    plan: '計画を続ける',
    otherwise: '別の値、日付、メモ',
    allTheSame: 'それでも値を設定しましたか？',
    takeMarkBack: '設定済みを取り消す',
    backToSweep: '測定に戻る',
    presses: '今のスイッチの働き',
  },
  width: {
    workshop: '修理先用のページ',
    title: '幅から中心を求める',
    why: '安定域の幅は、ピントの位置によらず同じです。ピントを少しずらすと安定域全体が補正範囲に入り、その幅から中心が分かります。',
    practice: '練習用カメラは自分でリングを回し、あとで真の安定域を示します。',
    steps: [
      'カメラ、レンズ、ターゲットは動かさないでください。',
      'ライブビューで、ピントがわずかに外れるまでリングを少し回します。逆向きなら、パネルが知らせます。',
      'これまでと同じように測定します。その間、リングに触れないでください。',
      'そのあと、厳密にピントを合わせ直します。',
    ],
    measure: '幅を測定',
  },
  // Common practice, no source.
  checks: {
    title: '確認項目',
    of: {
      'past the limit': [FOCUS, OTHER, SERVICE],
      'beyond the scale': [FOCUS, OTHER, SERVICE],
      nothing: [
        FOCUS,
        'ターゲットをカメラに正対させ、むらなく照らし、周囲よりコントラストを高くしてください。',
        '使用中の測距点がターゲットに重なり、レンズがファインダーAFに足りる明るさであることを確かめてください。',
        '背面ボタンでAFを行うボディでは、半押しではなく、そのボタンで合焦ランプが点きます。',
        '見ていたランプが、AEロックの表示ではなく合焦ランプであることを確かめてください。',
      ],
    },
  },
  practice: { title: '練習用カメラ', revealed: factRevealed, pictures: '練習用の画像で検証' },
};
