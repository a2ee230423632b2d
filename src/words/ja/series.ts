// Japanese: pictures in a series.
import type { CheckSeries } from '../../photographs/series/checkSeries.ts';
import type { BracketTold } from '../../photographs/series/bracketSeries.ts';
import { focusErrorOf, type StepSize } from '../../photographs/focusError.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { isOnScale, nearestWithin, writeSteps, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { line } from '../line.ts';
import type { SeriesWords } from '../seriesWords.ts';
import { between, BY_STEP, correctionBetween, focusFell, lengthAtTarget, lengthWithin, marginOf, sideOfTarget } from './focusFell.ts';
import { within } from './subject.ts';
import { write } from './write.ts';

const inMillimetres = ({ low, high }: WithInterval): string => `95%区間${between(low, high)}\u00a0mm`;

function checkTold(series: CheckSeries, value: Steps | null, scale: Scale, step: WithInterval | null): readonly string[] {
  const { check } = series;
  const { verdict, bias } = check;
  const which = value === null ? 'この値' : writeSteps(value);
  switch (verdict.is) {
    case 'confirmed':
      return [`${which}は正しい値です。`, `ピント位置は${focusFell(bias)}で、被写界深度に十分収まっています。`, ...waysTold(series)];
    case 'shifted':
      return [`ずれがあります。${which}でのピント位置は${focusFell(bias)}です。`, ...undone(series, value, scale, step), ...waysTold(series)];
    case 'not enough':
      return [
        `判断するには足りません。あと${write.number(verdict.more)}枚撮影してください。`,
        ...(Number.isFinite(marginOf(bias)) ? [`ここまでのピント位置は${focusFell(bias)}です。`] : []),
        ...waysTold(series),
      ];
  }
}

/** About how many steps undo the shift, by what a bracket measured a step to be worth, or else by an estimate. */
function undone({ check: { bias }, depth, step: estimate }: CheckSeries, value: Steps | null, scale: Scale, step: WithInterval | null): readonly string[] {
  const size: StepSize = step === null ? { from: 'estimate', step: estimate } : { from: 'bracket', step };
  const { toAdd } = focusErrorOf(bias, depth, size);
  const whole = toAdd === null ? 0 : Math.round(toAdd.value / scale.step) * scale.step;
  if (whole === 0) return [];
  const about = `約${write.signed(whole)}ステップで打ち消せます（${BY_STEP[size.from]}）。`;
  if (value === null) return [about];
  return [isOnScale(scale, value + whole) ? `${about}${writeSteps(value + whole)}にして、もう一度検証してください。` : `${about}ただし、補正範囲外です。`];
}

/** Told where the way that focus was thrown off surely makes a difference. */
function waysTold({ check: { nearLessFar } }: CheckSeries): readonly string[] {
  if (nearLessFar === null || (nearLessFar.low <= 0 && nearLessFar.high >= 0)) return [];
  const side = nearLessFar.value > 0 ? '奥' : '手前';
  return [`ピントを外した向きで差が出ています。近側から合わせると、遠側から合わせるより${lengthWithin(nearLessFar)}${side}になります。`];
}

function bracketTold({ measure, joined, band }: BracketTold, scale: Scale): readonly string[] {
  const { centre, step } = measure;
  const worth = `1ステップで、ピントはターゲットの位置で${lengthWithin(step)}動きます。`;
  const head = `画像による中心は${correctionBetween(centre)}です。`;
  if (joined === null || band === null) return [head, ...toEnter(centre.value, scale), worth];
  const apart = `${write.signed(joined.difference.value, 1)} ± ${write.number(marginOf(joined.difference), 1)}ステップ`;
  if (joined.is === 'differ')
    return [head, `安定域の中心${write.signed(band.value, 1)}とは${apart}食い違います。測定環境を確かめ、両方とも測定し直してください。`, worth];
  return [
    head,
    `安定域の中心${write.signed(band.value, 1)}と一致します（差は${apart}）。合わせた値は${correctionBetween(joined.joint)}です。`,
    ...toEnter(joined.joint.value, scale),
    worth,
  ];
}

function toEnter(centre: number, scale: Scale): readonly string[] {
  const value = nearestWithin(scale, centre);
  return value === null ? ['補正範囲外です。'] : [`設定する値：${writeSteps(value)}。`];
}

const LIVE_VIEW = '最大倍率のライブビューでピントを合わせ、1枚撮影します。';
const SHOTS = (count: number): string => `AFの画像${write.number(count)}枚。`;

export const words: SeriesWords = {
  use: {
    title: '画像の用途',
    options: {
      one: { label: '1枚ずつ見る', note: '鮮明か、ピントはどこか。' },
      check: { label: '設定した値の検証', note: '1つの値で数枚：その値は正しいか。' },
      bracket: { label: '補正値のブラケット', note: 'いくつかの値で撮影：中心はどこか、1ステップでどれだけ動くか。' },
    },
  },
  setUp: {
    title: '撮影の準備',
    steps: [
      'カメラを三脚に載せ、遠隔レリーズかセルフタイマーを使います。',
      '絞り開放、基準感度にします。紙が明るく、白飛びしない露出にします。',
      'シャープネスとノイズ低減を切るか、標準にします。',
      '最大サイズ、最高画質で記録します。',
      'カメラを動かさずに、ケーブルかカードリーダーで画像を取り込みます。',
    ],
  },
  result: '全体の結果',
  wait: 'すべての画像を読み取ると、結果が出ます。',
  out: {
    'another body': '別のボディで撮影されているため、除外します。',
    'another lens': '別のレンズで撮影されているため、除外します。',
    'another focal length': '別の焦点距離で撮影されているため、除外します。',
    'another aperture': '別の絞りで撮影されているため、除外します。',
    'the same shot': '同じ写真がすでにあります。1枚と数え、この画像は除外します。',
    'another distance': '別の距離で撮影されたか、トリミングされているため、除外します。',
  },
  shown: 'この画像の結果',
  each: {
    title: '画像ごとの結果',
    state: (count, out) => line([`${write.number(count)}枚`, out > 0 && `除外${write.number(out)}枚`]),
  },
  value: {
    label: '検証する値',
    hint: { one: 'ボディの現在の値。', check: 'ボディの現在の値。', bracket: 'この値の前後がブラケットの値になります。' },
    offTheScale: (scale) => `${within(scale)}の補正値を入力してください。`,
  },
  beside: {
    title: '原寸のエッジ：ライブビュー、この画像の順',
    reference: (upright) => `ライブビュー、${upright ? '縦' : '横'}のエッジ`,
    shot: (upright) => `この画像、${upright ? '縦' : '横'}のエッジ`,
  },
  noReference: 'ライブビューで合わせた画像がないため、傾斜スケールのわずかな置き方の狂いも、ずれに見えます。1枚撮影してください。',
  figures: '全体の数値',
  check: {
    order: {
      title: '撮影の順序',
      steps: [
        LIVE_VIEW,
        'ピントを大きく近側に外し、ファインダーのAFで合わせて1枚撮影します。',
        'ピントを大きく遠側に外し、AFで合わせて1枚撮影します。',
        'AFの画像が6枚になるまで、近側と遠側を交互に続けます。',
      ],
    },
    part: { title: 'ピント合わせ', options: { 'live view': 'ライブビュー', near: '近側から', far: '遠側から', 'left out': '除外' } },
    none: '使えるAFの画像がまだありません。',
    told: checkTold,
    figures: ({ check, shots, reference, depth }) => [
      `${SHOTS(shots)}平均${write.signed(check.bias.value, 1)}\u00a0mm${Number.isFinite(check.bias.high) ? `、${inMillimetres(check.bias)}` : ''}。\u2212は手前です。`,
      `ばらつき（標準偏差）：${lengthAtTarget(check.repeatability)}。`,
      ...(check.nearLessFar === null
        ? []
        : [`近側からと遠側からの差：${write.signed(check.nearLessFar.value, 1)}\u00a0mm、${inMillimetres(check.nearLessFar)}。`]),
      ...(reference === null ? [] : [`ライブビュー：${write.signed(reference.value, 1)}\u00a0mm、${inMillimetres(reference)}。平均から差し引いています。`]),
      `被写界深度：手前${lengthAtTarget(depth.front)}、奥${depth.behind === 'infinite' ? '無限' : lengthAtTarget(depth.behind)}。確実にその半分以内に収まれば、正しい値とします。`,
    ],
  },
  bracket: {
    order: {
      title: '撮影の順序',
      reference: LIVE_VIEW,
      shots: '次に、以下の値の順に、AFで1枚ずつ撮影します。毎回、先にピントを外します。',
      list: '値の順序',
    },
    part: {
      title: '撮影時の値',
      option: (part) => (part === 'live view' ? 'ライブビュー' : part === 'left out' ? '除外' : writeSteps(part)),
    },
    none: '使える画像がまだありません。',
    fault: {
      'too few shots': '枚数が足りません。2つ以上の値で、4枚以上撮影してください。',
      'no slope': '値によるピントの動きが、ばらつきより小さいため、中心が分かりません。値の間隔を広げるか、枚数を増やしてください。',
      'runs backwards': '値を大きくするとピントが手前に動いたため、中心が分かりません。どの画像がどの値か、確かめてください。',
    },
    told: bracketTold,
    apart: (names) => `${write.list(names)}は直線から大きく外れているため、ほとんど数えません。`,
    figures: ({ shots, reference }, { measure: { step, scatter, atZero } }) => [
      SHOTS(shots.length),
      `1ステップ：${write.number(step.value, 2)}\u00a0mm、95%区間${write.number(step.low, 2)}〜${write.number(step.high, 2)}\u00a0mm。`,
      `値が0のときのピント位置は${sideOfTarget(atZero)}${lengthAtTarget(atZero)}です。1枚ごとの直線からのばらつき（標準偏差）は${lengthAtTarget(scatter)}です。`,
      ...(reference === null
        ? []
        : [`ライブビュー：${write.signed(reference.value, 1)}\u00a0mm、${inMillimetres(reference)}。直線がこれと交わる所が中心です。`]),
    ],
    chart: {
      title: '値ごとのピント位置',
      said: ({ measure: { centre, step } }) =>
        `直線は1ステップごとに${write.number(step.value, 1)}\u00a0mm上がり、${write.signed(centre.value, 1)}でターゲットと交わります。`,
      behind: '奥',
      inFront: '手前',
    },
  },
};
