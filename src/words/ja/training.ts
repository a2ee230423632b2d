// Japanese: the trainer.
import { countedRight, namedRight, type TrainingHold, type TrainingLight } from '../../practice/training/round.ts';
import { RELIABLE, type Confusion } from '../../practice/training/score.ts';
import { taught } from '../taught.ts';
import type { TrainingWords } from '../trainingWords.ts';
import { write } from './write.ts';

type Slip = Exclude<keyof Confusion, 'right' | 'of'>;

const WAS: Readonly<Record<TrainingLight, string>> = {
  steady: '安定していました。',
  late: '遅れて点きました。',
  flicker: 'ちらつきました。',
  dark: '点きませんでした。',
};

/** The costly ones first. */
const SLIPS: Readonly<Record<Slip, string>> = {
  lateAsSteady: '遅れを安定と判定',
  flickerAsSteady: 'ちらつきを安定と判定',
  darkAsSteady: '点灯なしを安定と判定',
  steadyAsFailing: '安定を不安定と判定',
  wrongKind: '不安定の種類違い',
};

/** Of two that come as often, the one that can be unlearned best. */
const WATCH_FOR: Readonly<Record<Slip, () => string>> = {
  lateAsSteady: () => '押す前からランプを見てください。遅れるランプは、最初の一瞬が暗いままです。',
  flickerAsSteady: () => '時間が終わるまでランプから目を離さないでください。一度でも途切れれば、ちらつきです。',
  steadyAsFailing: () => '不安定と答えるのは、実際に見たときだけにしてください。自分のまばたきも途切れに見えます。',
  wrongKind: () => '暗いあとに点けば遅れ、点いたあとに途切れればちらつき、一度も点かなければ点灯なしです。',
  darkAsSteady: () => `一度も点かなかったときは、「${taught('nothing')}」と言ってください。`,
};

const keysOf = (record: Readonly<Record<Slip, unknown>>): readonly Slip[] => Object.keys(record) as Slip[];

function counts(hold: TrainingHold): string {
  if (namedRight(hold)) return '正解。';
  if (!countedRight(hold)) return '不正解。';
  return hold.told === 'untold' ? '正解、不安定でした。' : '不安定は正解ですが、種類が違います。';
}

export const words: TrainingWords = {
  title: '目の練習',
  about:
    '練習用ランプで、2秒の半押しを10回行います。測定と同じように、声、キー、ポインター、スイッチで答えてください。' +
    '2回続けて正解すると、遅れとちらつきが見分けにくくなります。間違えると、見分けやすくなります。',
  begin: '練習を始める',
  another: 'もう一度練習する',
  hold: {
    label: '練習の半押し',
    title: (number, of) => `半押し${write.number(number)}/${write.number(of)}`,
    answers: '今できる判定',
    ready: '用意ができたら押してください。',
    watch: 'ランプを見てください。',
    over: '時間です。どう見えましたか？',
    tooSoon: 'まだです。時間が終わるまで待ってください。',
    was: (hold) => `${counts(hold)}${WAS[hold.shown]}`,
  },
  round: {
    label: '今回の結果',
    right: ({ right, of }) => `${write.number(of)}回中${write.number(right)}回正解`,
    slips: (confusion) =>
      keysOf(SLIPS)
        .filter((slip) => confusion[slip].missed > 0)
        .map((slip) => `${SLIPS[slip]}：${write.number(confusion[slip].shown)}回中${write.number(confusion[slip].missed)}回。`),
    watchFor(confusion) {
      const [worst] = keysOf(WATCH_FOR).toSorted((a, b) => confusion[b].missed - confusion[a].missed);
      return worst && confusion[worst].missed > 0 ? WATCH_FOR[worst]() : '今回は間違いがありませんでした。';
    },
    level: (level, last) => `今のレベルは${write.number(level)}です（最高${write.number(last)}）。`,
  },
  standing: {
    title: '判定の確かさ',
    reliability: ({ right, of, low, high, reached }) => [
      `見分けやすい半押し${write.number(of)}回中${write.number(right)}回で、安定か不安定かを正しく判定しました。`,
      `正しく判定できる割合は、95%区間で${write.percent(Math.floor(low * 100) / 100)}〜${write.percent(Math.ceil(high * 100) / 100)}です。`,
      reached ? '測定には十分な確かさです。' : `測定に使うには、区間の下限が${write.percent(RELIABLE)}に達する必要があります。`,
    ],
    kept: (rounds, newest) => [
      `${write.number(rounds)}回分の練習が残っています（最新は${write.day(newest)}）。`,
      '最近8回分のうち、見分けやすいランプだけを数えます。',
    ],
    tooFew: (enough, sofar) =>
      `見分けやすい半押しが${write.number(enough)}回に達すると、自分の間違いの割合を測定に使えます。今は${write.number(sofar)}回です。`,
    own: {
      label: '自分の確かさを使う',
      note: (lapse) => `次の測定から、判定の間違いを通常の${write.percent(0.02)}ではなく、自分の${write.percent(lapse, 1)}として見込みます。`,
    },
    forget: '練習の記録を消去',
    forgetNow: '消去する',
    keep: '残す',
  },
};
