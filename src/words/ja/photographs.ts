// Japanese: photographs of the printed target.
import type { EdgeFault } from '../../photographs/edge.ts';
import type { FindFault } from '../../photographs/findFault.ts';
import { focusErrorOf, type StepSize } from '../../photographs/focusError.ts';
import type { FocusUntold, FocusReading } from '../../photographs/focusReading.ts';
import type { Motion, MotionWay } from '../../photographs/motion.ts';
import type { EdgeReading } from '../../photographs/reading.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import type { MarkName } from '../../optics/print/marks.ts';
import { line } from '../line.ts';
import type { PhotographsWords } from '../photographsWords.ts';
import { between, BY_STEP, lengthAtTarget, sideOfTarget } from './focusFell.ts';
import { write } from './write.ts';

const AS_TAKEN = 'カメラで撮影したままの画像を取り込んでください。';

const MARK: Readonly<Record<MarkName, string>> = {
  'upper left': '左上',
  'upper right': '右上',
  'lower left': '左下',
  'lower right': '右下',
};

const EDGE_FAULT: Readonly<Record<EdgeFault['is'], string>> = {
  'edge outside': '画像の端に近すぎる',
  'edge too short': '短すぎる',
  'edge not slanted': '印刷どおりの傾きがない',
  'no edge': 'エッジが見つからない',
  'edge not straight': 'まっすぐでない',
  'edge clipped': '明るすぎるか暗すぎる',
  'two edges': '隣に別のものがある',
  'edge too blurred': 'ぼけすぎている',
  'edge too sharp': '画素で測れる限界より鮮明',
};

function notFound(fault: FindFault): string {
  switch (fault.is) {
    case 'no print':
      return 'ターゲットが見つかりません。ターゲット全体が写るように撮影してください。';
    case 'half a print':
      return `ターゲットの一部しか見つかりません。${write.list(fault.missing.map((name) => MARK[name]))}のマークがありません。ターゲット全体を入れてください。`;
    case 'two prints':
      return 'ターゲットが2つ見つかりました。片方を画面から外してください。';
    case 'print too small':
      return 'この画像ではターゲットが小さすぎます。近づくか、もっと大きく印刷してください。';
    case 'print too tilted':
      return `ターゲットが${write.degrees(fault.tilt, 0)}傾いています。カメラに正対させてください。`;
    case 'older print':
      return 'このターゲットには検出用のマークがないため、計測できません。新しく印刷してください。';
    case 'marks unread':
      return 'ターゲットのマークを読み取れません。むらなく照らし、さえぎるものをなくし、その近くにピントを合わせ、カメラのシャープネスを切ってください。';
    case 'picture blown':
      return 'この画像は白飛びしています。露出を減らしてください。';
    case 'picture black':
      return 'この画像は真っ暗です。露出を増やしてください。';
  }
}

const moved = (way: MotionWay): string =>
  `この画像は${way === 'sideways' ? '縦より横に' : '横より縦に'}強くぶれています。カメラが動きました。三脚と、遠隔レリーズかセルフタイマーを使ってください。`;

const noRamp = (why: FindFault): string =>
  why.is === 'half a print'
    ? '傾斜スケールの一部しか見つからず、ピント位置が分かりません。傾斜スケール全体を入れてください。'
    : '傾斜スケールが見つからず、ピント位置が分かりません。ターゲットの下に置き、全体を入れてください。';

const LACKING = { focalLength: '焦点距離', aperture: '絞り', sensor: 'センサーの大きさ' };

function noFocus(fault: FocusUntold): string {
  switch (fault.is) {
    case 'no target':
      return 'ターゲットがないため、ピント位置が分かりません。';
    case 'no ramp':
      return noRamp(fault.why);
    case 'camera unknown':
      return `ピント位置を求めるには、${write.list(fault.lacking.map((each) => LACKING[each]))}が必要です。機材のボディとレンズの情報を補い、カメラが記録したままの画像を取り込んでください。`;
    case 'not the whole picture':
      return `この画像はセンサーと縦横比が違います。トリミングされたか、画面の写しです。${AS_TAKEN}`;
    case 'cropped':
      return `この画像は撮影後にトリミングされているため、ピント位置が分かりません。${AS_TAKEN}`;
    case 'too few pixels':
      return `この画像は小さすぎて、ピント位置が分かりません。${AS_TAKEN}`;
    case 'ramp unread':
      switch (fault.why.is) {
        case 'ramp hidden':
          return '傾斜スケールの読める部分が少なく、ピント位置が分かりません。さえぎるものをなくし、むらなく照らしてください。';
        case 'ramp blown out':
          return '傾斜スケールが白飛びし、ピント位置が分かりません。露出を減らしてください。';
        case 'focus off the ramp':
          return `ピント位置が傾斜スケールの${fault.why.lies === 'behind' ? '奥' : '手前'}の端を越えています。ターゲットの近くにピントを合わせるか、もっと長い傾斜スケールを印刷してください。`;
        case 'ramp too flat':
          return '傾斜スケール全体がほぼ同じ鮮明さで、ピント位置が分かりません。絞りを開けるか、もっと長い傾斜スケールを印刷してください。';
        case 'camera moved':
          return moved(fault.why.blurs === 'upright' ? 'sideways' : 'up and down');
      }
  }
}

const reached = ({ low, high }: FocusReading['ramp']['interval']): string =>
  low < 0 && high > 0
    ? `手前${lengthAtTarget(low)}から奥${lengthAtTarget(high)}まで`
    : `${low < 0 ? '手前' : '奥'}${lengthAtTarget(Math.min(Math.abs(low), Math.abs(high)))}〜${lengthAtTarget(Math.max(Math.abs(low), Math.abs(high)))}`;

const HEADLINE: Readonly<Record<FocusReading['is'], string>> = {
  sharp: '十分に鮮明です。',
  'not sharp': '鮮明さが足りません。',
  'not sure': '十分に鮮明かどうか、判断できません。',
};

/** What is in focus is not sharp where the camera moved, which is told beside it. */
const focusSentences = ({ is, ramp }: FocusReading, motion: Motion = { is: 'alike' }): readonly string[] => [
  is === 'sharp' && motion.is === 'moved' ? 'ピントは合っています。' : HEADLINE[is],
  ramp.lies === 'on the target' ? '分かる限り、ピントはターゲット上です。' : `ピント位置は${sideOfTarget(ramp.error)}${lengthAtTarget(ramp.error)}です。`,
  `95%区間：${reached(ramp.interval)}。`,
];

function focusFigures(focus: FocusReading, measured: WithInterval | null): readonly string[] {
  const { ramp, depth, share } = focus;
  return [
    `ピントのずれ${write.signed(ramp.error, 1)}\u00a0mm、95%区間${between(ramp.interval.low, ramp.interval.high)}\u00a0mm。\u2212は手前です。`,
    `被写界深度：手前${lengthAtTarget(depth.front)}、奥${depth.behind === 'infinite' ? '無限' : lengthAtTarget(depth.behind)}。ピントのずれは、その側の深度の${write.percent(share)}です。`,
    `最小のぼけ：${write.number(ramp.leastBlur, 2)}画素。ぼけの増え方は、このレンズの想定の${write.number(ramp.growth, 2)}倍です。`,
    ...undone(focus, measured),
  ];
}

/** How many steps undo a focus error that is told, by what a bracket measured a step to be worth, or else by an estimate. */
function undone({ ramp, depth, step }: FocusReading, measured: WithInterval | null): readonly string[] {
  if (ramp.lies === 'on the target') return [];
  const size: StepSize = measured === null ? { from: 'estimate', step } : { from: 'bracket', step: measured };
  const { toAdd } = focusErrorOf({ value: ramp.error, ...ramp.interval }, depth, size);
  return toAdd === null ? [] : [`補正を約${write.signed(toAdd.value, 1)}ステップ変えると打ち消せます（${BY_STEP[size.from]}）。`];
}

const AT: Readonly<Record<EdgeReading['edge']['at'], string>> = { middle: '中央', corner: '隅' };
const RUNS: Readonly<Record<EdgeReading['edge']['runs'], string>> = { upright: '縦', level: '横' };
const edgeName = ({ edge }: EdgeReading): string => `${AT[edge.at]}、${RUNS[edge.runs]}のエッジ`;

export const words: PhotographsWords = {
  title: '写真で検証',
  choose: '画像',
  drop: '選択、ドロップ、貼り付けのいずれか。',
  stays: 'このコンピューター上で読み取り、どこにも送らず、保存もしません。',
  practise: '練習用の画像で試す',
  printed: {
    label: '印刷した基準目盛の実寸（mm）',
    hint: '設計値は100。違う場合は、画像を取り込む前に入力してください。',
    fault: '印刷した基準目盛の長さを、94のように50〜200\u00a0mmの範囲で入力してください。',
  },
  pictures: '取り込んだ画像',
  more: (count) => `${write.number(count)}枚の続きを表示`,
  progress: (read, all) => `${write.number(all)}枚中${write.number(read)}枚を読み取りました。`,
  stage: {
    waiting: '待機中',
    opening: 'ファイルを読み込み中',
    decoding: '画像を展開中',
    measuring: '計測中',
    'let go': '読み取っていません。読み取るには、もう一度取り込んでください。',
  },
  stop: '読み取りを中止',
  clear: 'すべての画像を外す',
  fault: {
    'file unread': 'このファイルを読み込めません。元の場所にあるか確かめて、取り込み直してください。',
    'no picture': 'このファイルに、ブラウザーで読める画像がありません。撮影した大きさのJPEG、PNG、WebP、AVIFを取り込んでください。',
    'no picture inside': 'このRAWファイルに、ブラウザーで読める画像がありません。同じ写真のJPEGを取り込んでください。',
    'only a small picture inside': 'このRAWファイルには小さなプレビューしかありません。同じ写真の原寸のJPEGを取り込んでください。',
    'too large': 'この画像はここで読み取るには大きすぎます。1億1000万画素以下のものを取り込んでください。',
    'too small': `この画像は計測するには小さすぎます。${AS_TAKEN}`,
    stopped: 'この画像を読み取れませんでした。取り込み直すか、別の画像にしてください。',
  },
  found: (ramp) => (ramp ? '画像。ターゲットと傾斜スケールに枠が付いています。' : '画像。ターゲットに枠が付いています。'),
  target: ({ tilt, resized }) => {
    const stands =
      tilt < 3
        ? 'ターゲットが見つかりました。カメラに正対しています。'
        : `ターゲットが見つかりましたが、約${write.degrees(tilt, 0)}傾いています。カメラに正対させてください。`;
    return resized === null ? stands : `${stands}このファイルは撮影時の${write.percent(resized)}に縮小されていて、鮮明さが変わっています。${AS_TAKEN}`;
  },
  notFound,
  focus: focusSentences,
  noFocus,
  moved,
  sharpened: 'この画像はシャープネス処理されているため、MTF50が実際より高く出ます。カメラのシャープネスを切ってください。',
  unslanted: (roll) =>
    `ターゲットが${roll < 0 ? '反時計回り' : '時計回り'}に${write.degrees(Math.abs(roll), 0)}回っていて、エッジが画素の並びと重なり、計測できません。まっすぐにしてください。`,
  unstated: `このファイルには撮影情報がなく、トリミングされていても分かりません。トリミングした場合は、${AS_TAKEN}`,
  crops: '原寸のエッジ',
  crop: edgeName,
  chart: {
    title: '傾斜スケールに沿った鮮明さ',
    said: (focus) => focusSentences(focus).join(''),
    target: 'ターゲット',
    depth: (depth) => write.unit(depth, 'millimeter'),
  },
  figures: {
    title: '数値',
    edge: (reading) =>
      reading.measure.ok
        ? `${edgeName(reading)}：MTF50は${write.number(reading.measure.value.mtf50, 3)}サイクル/画素、95%区間${write.number(reading.measure.value.interval.low, 3)}〜${write.number(reading.measure.value.interval.high, 3)}。`
        : `${edgeName(reading)}：${EDGE_FAULT[reading.measure.fault.is]}。`,
    target: ({ scale, roll, tilt }) =>
      `1\u00a0mmあたり${write.number(scale, 2)}画素、回転${write.degrees(Math.round(roll * 10) / 10, 1)}、傾き${write.degrees(tilt, 1)}。`,
    focus: focusFigures,
  },
  keep: {
    label: '記録帳に保存',
    done: '記録帳に保存済み',
    what: (crops) => (crops === 0 ? '数値を保存し、画像は保存しません。' : `数値と切り出し画像${write.number(crops)}枚を保存し、元の画像は保存しません。`),
    kept: 'この組み合わせの履歴に保存しました。',
    erase: '消去する',
    noSituation: '保存するには、記録帳で組み合わせを選び、そこから画像を取り込んでください。',
    noValue: '保存するには、検証する値を上に入力してください。',
    another: 'この画像は、この組み合わせとは違うボディ、レンズ、焦点距離で撮影されているため、ここには保存できません。',
  },
  camera: ({ width, height }, camera) =>
    line([
      `${write.number(width)} × ${write.number(height)}画素`,
      camera !== null && camera.focalLength !== null && write.millimetres(camera.focalLength),
      camera !== null && camera.aperture !== null && `f/${write.number(camera.aperture, 1)}`,
      camera !== null && camera.distance !== null && write.distance(camera.distance),
      camera !== null && camera.taken !== null && write.dayAndTime(camera.taken),
    ]),
};
