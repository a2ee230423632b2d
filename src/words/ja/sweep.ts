// Japanese: what a sweep under way shows.
import type { Care } from '../../sweep/care.ts';
import type { Plain, Word } from '../../sweep/inputs.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { SweepWords } from '../sweepWords.ts';
import { taught } from '../taught.ts';
import { drifted } from './drift.ts';
import { press } from './press.ts';
import { within as range } from './subject.ts';
import { arrowsSaid, readBack, seen } from './verdict.ts';
import { write } from './write.ts';

const CARE: Readonly<Record<Care, string>> = { quick: '簡易', standard: '標準', thorough: '入念' };

const WANTED = { centre: '中心はまだ不確か', ends: '両端は未確認' } as const;

/** The word that stands for what was told by key or by button. */
const wordFor = (told: Plain): Word => (told === 'hold' ? 'holding' : told === 'unmoved' ? 'same' : told === 'moved' ? 'shifted' : told);

const told: SweepWords['heard']['told'] = (input) => {
  if ('heard' in input && input.heard !== null) return input.heard;
  switch (input.told) {
    case 'verdict':
      return readBack(input.verdict);
    case 'arrows':
      return arrowsSaid(input.arrows) ?? '矢印なし';
    case 'set':
      return `${taught('set')} ${writeSteps(input.value)}`;
    case 'press':
      return press.is[input.press];
    default:
      return taught(wordFor(input.told));
  }
};

const became: SweepWords['heard']['became'] = (event, hold) => {
  switch (event.did) {
    case 'began':
      return `${writeSteps(event.value)}で半押し`;
    case 'judged':
    case 'amended':
      return hold ? `${writeSteps(hold.value)}：${seen(hold.verdict)}` : '記録しました';
    case 'chose':
      return `${writeSteps(event.value)}に変更`;
    case 'skipped':
      return 'スキップしました';
    case 'undid':
      return '取り消しました';
    case 'paused':
      return '一時停止';
    case 'resumed':
      return '再開';
    case 'checked':
      return event.focus === 'unmoved' ? 'ピントは変わらない' : 'ピントがずれた';
    case 'went on':
      return '続行';
    case 'finished':
      return '終了';
    case 'opened':
    case 'ran':
    case 'unanswered':
    case 'cut off':
    case 'heard':
      return '記録しました';
  }
};

export const words: SweepWords = {
  leave: '最初の画面へ。測定は待機します。',
  leaveFarView: '大画面表示を終える',
  setUp: '測定環境の準備',
  face: {
    label: '現在',
    hold: '半押し',
    value: { set: '合わせる値', enter: '設定する値' },
    caption: {
      dialling: '合わせる',
      holding: '半押し',
      judging: '時間です',
      paused: '一時停止',
      checking: 'ピントの確認',
      turning: 'ピントをずらす',
      enter: '設定する',
      'past the limit': '限界の先',
      'beyond the scale': '補正範囲外',
      nothing: '安定なし',
    },
    thenPress: 'そのあと半押し',
    thenWait: 'そのあと合図を待つ',
    already: '合わせ済み',
    way: (clicks, direction, from) => `${writeSteps(from)}から${write.number(clicks)}つ${direction === 'up' ? '上' : '下'}`,
    left: (seconds) => ({ figure: write.number(seconds), unit: '秒' }),
    steady: '安定？',
    paused: '測定は待機中',
    past: '安定域が補正範囲の先まで続いています。',
    lies: { above: '安定域は補正範囲より上です。', below: '安定域は補正範囲より下です。' },
    centreAbout: (centre) => `中心は約${write.signed(centre, 1)}です。`,
    toCheck: '確定すると、確認項目を表示します。',
    news: { holding: '半押し中です。', judging: '時間です。ランプは安定していましたか？' },
  },
  sure: (within) => `±1ステップ以内の確率${write.chance(within)}`,
  notYetSure: (within) => `±1ステップ以内の確率はまだ${write.chance(within)}`,
  offer: {
    enough: (care, look) =>
      look
        ? `精度「${CARE[care]}」には十分です。ライブビューでピントが合ったままなら確定するか、半押しを続けてください。`
        : `精度「${CARE[care]}」には十分です。確定するか、半押しを続けてください。`,
    asItStands: '確定するか、半押しを続けてください。',
    noMoreHolds: '半押しを増やしても変わりません。',
    firstThis: '先にこれを直してください。半押しを増やすだけでは解決しません。',
  },
  standing: {
    anywhere: '中心はまだ不明',
    near: (value, within) => `中心は${writeSteps(value)}付近、±1ステップ以内の確率${write.chance(within)}`,
    centre: (centre) => `中心${write.signed(centre, 1)}`,
    holds: (made) => `半押し${write.number(made)}回`,
    toCome: (made, all, wanted) => line([`半押し約${write.number(all)}回中${write.number(made)}回`, wanted && WANTED[wanted]]),
  },
  checkFocus: {
    title: 'ピントの確認',
    why: drifted,
    look: 'リングに触れずに、ライブビューを見てください。ピントは合ったままですか？',
    lookAside: 'リングに触れずに、ライブビューを見てください。ピントの外れ方は前と同じですか？',
  },
  turnFocus: {
    label: 'ピントをずらす',
    title: { first: 'ピントをずらす', further: 'もう少し', 'other way': '反対側へ', back: '回しすぎ' },
    what: {
      first: 'ライブビューで、ターゲットのピントがわずかに外れるまでリングを少し回してください。どちらへ回してもかまいません。正しい向きは半押しで分かります。',
      further: '向きは合っています。ライブビューで、リングをもう少し回してください。',
      'other way': '安定域が前より遠ざかりました。ピントの合う位置を越えて、反対側にわずかに外れるまでリングを戻してください。',
      back: '安定域が反対側にはみ出しました。ピントの合う位置に向けて、半分ほどリングを戻してください。',
    },
    leaveIt: 'そのあとは、この測定が終わるまでリングに触れないでください。',
    practice: '実際のレンズでは、ライブビューでピントがわずかに外れるまでリングを回します。練習用カメラは自分で回します。',
  },
  setValue: {
    title: '別の値にする',
    value: '値',
    up: '1ステップ上',
    down: '1ステップ下',
    set: '変更',
    cancel: 'キャンセル',
    offTheScale: (scale) => (scale.step === 1 ? `${range(scale)}の整数を入力してください。` : `${range(scale)}の値を入力してください。`),
  },
  heard: { label: '直前の入力', none: 'まだ判定なし', told, became },
  understood: { answers: '今できる判定', arrows: '直前の半押しの矢印', asides: 'そのほかにできること' },
  press,
  space: 'スペース',
  following: { label: '閲覧中', what: '別のウィンドウで測定中です。ここでは見るだけです。', takeOver: 'こちらに引き継ぐ' },
  strip: {
    label: 'これまでの半押し',
    hold: ({ value, verdict }, counts) => `${writeSteps(value)} ${seen(verdict)}：${counts === 'in' ? '域内' : '域外'}`,
  },
};
