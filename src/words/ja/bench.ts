// Japanese: the bench.
import type { BenchWords } from '../benchWords.ts';
import { line } from '../line.ts';
import { benchFault } from './benchFaults.ts';
import { CHOICES, BENCH_FIELD, HINT } from './benchFields.ts';
import { bySides, focus, lightFound, stands, STEP_FROM, tilted } from './benchFindings.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';

const mm = (length: number, digits: number): string => write.unit(length, 'millimeter', digits);

export const words: BenchWords = {
  title: '測定環境',
  focalLength: '焦点距離（mm）',
  missing: {
    'no focal length': '焦点距離を85のようにミリメートルで入力してください。',
    untold: '先に、この測定の焦点距離を入力してください。値の上の「焦点距離」を押します。',
  },
  rig: ({ lens, body, focalLength }) => line([lens, body, write.millimetres(focalLength)]),
  fault: benchFault,
  field: BENCH_FIELD,
  hint: HINT,
  empty: (length) => `空欄なら${write.number(length)}。`,
  measured: { m: '実測の距離（m）', ft: '実測の距離（ft）' },
  choices: CHOICES,
  sensor: ({ width, height }) => `${write.number(width, 2)} × ${write.number(height, 2)}\u00a0mm`,
  distance: {
    title: '距離',
    figures: ({ usual, shortest, yours, unit }) => [
      { name: '一般用', value: `${write.distance(usual, unit)}、焦点距離の50倍` },
      { name: '狭い部屋', value: `${write.distance(shortest, unit)}以上、焦点距離の25倍` },
      { name: '現在', value: write.distance(yours, unit) },
    ],
    stands,
    use: (length, unit) => `測定に${write.distance(length, unit)}を使う`,
    useUsual: '焦点距離の50倍を使う',
  },
  depth: {
    title: 'レンズと被写界深度',
    finer: '詳細：コンバーター、画素、AFエリア、錯乱円、ステップ',
    wanted: '開放絞りを入力すると、被写界深度、明るさ、傾き、ターゲットを表示します。',
    figures: ({ magnification, measured, total, front, behind, near, far, focus: atSensor, quarterWave, hyperfocal, blur, airy, unit }) => [
      { name: '撮影倍率', value: `1 : ${write.number(1 / magnification, 1)}`, note: measured ? '実測' : '薄肉レンズの計算' },
      { name: '被写界深度', value: nearTarget(total, unit) },
      { name: '手前', value: nearTarget(front, unit) },
      { name: '奥', value: nearTarget(behind, unit) },
      {
        name: '鮮明な範囲',
        value: far === 'infinite' ? `${write.distance(near, unit)}〜無限遠` : write.distances(near, far, unit).join('〜'),
        note: '撮像面から',
      },
      { name: '焦点深度', value: mm(atSensor, 3), note: `4分の1波長の誤差は${mm(quarterWave, 3)}` },
      { name: '過焦点距離', value: nearTarget(hyperfocal, unit) },
      { name: '許容錯乱円', value: mm(blur, 3), note: `エアリーディスクはその${write.percent(airy)}` },
    ],
    step: (step, share, unit, by) =>
      `1ステップで、ピントはターゲットの位置で約${nearTarget(step, unit)}動きます。奥側の被写界深度の${write.percent(share)}です。${STEP_FROM[by]}`,
    worthMeasured: '写真のブラケットによる実測値。',
    converted: (aperture, lensSteps, bodySteps) =>
      `コンバーターを付けると、合成F値はf/${write.number(aperture, 1)}になります。レンズによる誤差のステップ数は${write.number(lensSteps, 2)}倍、` +
      `ボディによる誤差は${write.number(bodySteps, 2)}倍になります。そのため、コンバーター使用時は別に測定してください。`,
  },
  target: {
    title: 'ターゲット',
    wanted: '開放絞りを入力すると、ターゲットを描きます。',
    size: (bar, field, sheets) => `線幅${mm(bar, 2)}、図の大きさ${mm(field, 0)}、用紙${write.number(sheets)}枚。`,
    open: '印刷用ページを開く',
    print: ({ factor, trueSize }) =>
      trueSize
        ? '印刷は実寸どおりです。'
        : `印刷は${write.percent(factor, 1)}の大きさになっています。用紙に合わせず、100%で印刷し直してください。そのまま使う場合は、寸法を${write.percent(factor, 1)}で計算します。`,
  },
  light: { title: '明るさ', finer: '照明と十分な明るさ', verdict: lightFound },
  square: {
    title: '正対',
    byEye: 'ここでは、ターゲットの正対は目測で足ります。',
    allowed: (tilt, width, nearer) =>
      `ターゲットの傾きは${write.degrees(tilt, 1)}以内にしてください。幅${write.millimetres(width)}の両端で、カメラからの距離の差を${mm(nearer, nearer < 1 ? 2 : 1)}以内に収めます。`,
    miss: {
      mirror: (pixels) => `鏡に映るレンズは、画面中央から${write.number(pixels)}画素までずれてもかまいません。`,
      spot: (off) => `戻ってくる光点は、光源から${write.millimetres(off)}までずれてもかまいません。`,
    },
    tilted,
    bySides,
  },
  place: {
    title: '傾斜スケールと深度の配分',
    finer: '詳細：傾斜スケールの角度が違う場合',
    onTarget: 'ピントはターゲット上にあります。',
    focus,
    wanted: '開放絞りを入力すると、移動量を計算します。',
    share: (now) => `被写体にピントを合わせると、被写界深度の${write.percent(now)}が手前に入ります。測定で得た値を移し、結果にもそう示します。`,
  },
  walk: {
    title: '準備ガイド',
    what: '手順を1つずつ、読み上げと画面で案内します。確認した項目と測った値は、測定とともに保存します。',
    kit: '機材の特徴',
    traits: {
      bodyStabiliser: 'ボディ内手ぶれ補正',
      lensStabiliser: 'レンズ内手ぶれ補正',
      liveView: 'ライブビュー',
      rearButton: '背面ボタンでAF',
      manualAtBody: 'ボディでMFに切り替え',
      zoom: 'ズームレンズ',
      heavy: '三脚座のあるレンズ',
    },
    notYet: '始めるには、上で開放絞りを入力し、印の付いた項目を直してください。',
    begin: '準備ガイドを始める',
  },
};
