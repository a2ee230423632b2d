// Japanese: one situation of the logbook.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { seconds } from '../../units.ts';
import { line } from '../line.ts';
import type { SituationWords } from '../situationWords.ts';
import { between } from './focusFell.ts';
import { driftTold } from './monthsOfDrift.ts';
import { shown } from './proved.ts';
import { write } from './write.ts';

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: '測定',
  'by hand': '手入力',
  'from a table': '表から',
  'from another computer': '別のコンピューターから',
};

const NO_VALUE: Readonly<Record<Measured['found'], string>> = {
  band: '値なし',
  value: '値なし',
  'carried over': '範囲外',
  'past the limit': '限界の先',
  'beyond the scale': '範囲外',
  nothing: '安定域なし',
};

/** So many of the newest values stand in one line. */
const NEWEST = 6;

/** A length on the range of corrections, to a tenth. */
const stepsOf = (value: number): string => `${write.number(value, 1)}ステップ`;

export const words: SituationWords = {
  gone: 'この組み合わせは、もう記録帳にありません。',
  lastValue: '最新の値',
  value: '使う値',
  dueAgain: '要再測定',
  toEnter: 'このレンズに設定する値',
  photographs: '写真で検証',
  recheck: '簡易再確認',
  anew: '測定し直す',
  measure: '測定する',
  answer: {
    sure: ({ by, chosen, within }, value) => {
      if (by !== 'sweep') return CAME[by];
      if (within === null) return '';
      const sure = `±1ステップ以内の確率${write.chance(within)}`;
      return chosen === null || chosen === value ? sure : `${writeSteps(chosen)}：${sure}`;
    },
    before: (measured) => {
      const values = measured.map(({ chosen, found }) => (chosen === null ? NO_VALUE[found] : writeSteps(chosen)));
      const listed = values.length > NEWEST ? ['…', ...values.slice(-NEWEST)] : values;
      const since = measured[0] ? `${write.monthAndYear(measured[0].at)}から` : '';
      return `${since}${write.number(measured.length)}回測定：${listed.join('、')}`;
    },
    notDue: '再測定はまだ不要です。',
    moreReasons: (count) => `理由がほかに${write.number(count)}件`,
  },
  rooms: {
    evidence: '根拠',
    kept: ({ measured, entries, proofs }) =>
      line([
        measured.length > 0 && `測定${write.number(measured.length)}件`,
        entries.length > 0 && `設定${write.number(entries.length)}件`,
        proofs.length > 0 && `写真${write.number(proofs.length)}件`,
      ]) || 'まだなし',
    entering: '設定状況',
    inCamera: (value) => (value === null ? '未設定' : `カメラの値は${writeSteps(value)}`),
    others: 'このレンズのほかの組み合わせ',
    situations: (count) => `${write.number(count)}件`,
    figures: '数値',
  },
  figures: ({ low, high, centre, interval, within, holds, seconds: taken }) => [
    ...(low !== null && high !== null ? [{ what: '安定域', is: `${writeSteps(low)}〜${writeSteps(high)}` }] : []),
    ...(centre !== null ? [{ what: '中心', is: write.signed(centre, 1) }] : []),
    ...(interval ? [{ what: '中心の95%区間', is: between(interval.from, interval.to) }] : []),
    ...(within !== null ? [{ what: '±1ステップ以内の確率', is: write.chance(within) }] : []),
    ...(holds !== null ? [{ what: '半押し', is: `${write.number(holds)}回` }] : []),
    ...(taken !== null ? [{ what: '所要時間', is: write.duration(seconds(taken)) }] : []),
  ],
  retire: 'この組み合わせを使用終了にする',
  bringBack: 'この組み合わせを使用中に戻す',
  history: {
    title: '履歴',
    none: 'ここにはまだ、測定、設定、写真の記録がありません。',
    chart: '点：測定値と95%区間。四角：カメラの設定値。',
    chartWithDrift: '点：測定値と95%区間。網かけ：変動の95%区間。四角：カメラの設定値。',
    drifted: driftTold,
    entered: ({ at }) => `カメラに設定、${write.day(at)}`,
    measured: ({ by, at }) => `${CAME[by]}、${write.day(at)}`,
    noValue: NO_VALUE,
    facts: ({ found, service, low, high, interval, within, holds, other }) =>
      line([
        found === 'carried over' && '幅からの推定',
        service && '要点検',
        other !== null && `または${writeSteps(other)}`,
        low !== null && high !== null && `安定域${writeSteps(low)}〜${writeSteps(high)}`,
        interval && `中心の95%区間${between(interval.from, interval.to)}`,
        within !== null && `±1ステップ以内の確率${write.chance(within)}`,
        holds !== null && `半押し${write.number(holds)}回`,
      ]),
    seeHolds: '半押しの一覧とメモ',
    photographed: {
      ...shown,
      more: '切り出し画像を見る、消去する',
      crops: (both) => (both ? '原寸：ライブビュー、AFの順' : '原寸'),
      noCrops: 'このブラウザーに切り出し画像はありません。',
      crop: { reference: 'ライブビューで合わせた画像', shot: 'AFで合わせた画像' },
      eraseCrops: '切り出し画像を消去',
      erase: '履歴から消去',
    },
  },
  repeated: {
    title: (count) => `${write.number(count)}回の測定のまとめ`,
    centre: ({ value, from, to }) => `中心${write.signed(value, 1)}（95%区間${between(from, to)}）。`,
    last: ({ apart, allowed, differ }) => [
      `最近2回の差は${stepsOf(apart)}で、偶然で説明できるのは${stepsOf(allowed)}までです。`,
      differ ? 'それを超えて食い違っています。' : '一致しています。',
    ],
    differ: '測定結果が食い違う',
    scatter: ({ q, freedom, i2, tau2 }) => [
      `ばらつきQは${write.number(q, 1)}（自由度${write.number(freedom)}）。`,
      `その${write.percent(i2)}は偶然を超えるものです。`,
      `測定間のばらつき：${stepsOf(Math.sqrt(tau2))}。`,
    ],
  },
  byHand: {
    open: '値を手入力',
    form: '手入力',
    known: '分かっていること',
    is: { band: '安定域の両端', value: 'カメラの現在の値だけ' },
    one: '一方の端',
    other: 'もう一方の端',
    centre: (centre) => `中心は${write.signed(centre, 1)}です。`,
    which: '中心に同じだけ近い値が2つあります。どちらにしましたか？',
    value: '現在の値',
    save: '値を保存',
    saved: '記録帳に保存しました。',
    choice: writeSteps,
  },
};
