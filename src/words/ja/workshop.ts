// Japanese: the page for a workshop.
import type { WorkshopWords } from '../workshopWords.ts';
import { shown } from './proved.ts';
import { pair, within } from './subject.ts';
import { LIGHT } from './verdict.ts';
import { write } from './write.ts';

export const words: WorkshopWords = {
  title: '修理先の方へ',
  gone: 'この測定は記録帳にありません。このページを閉じて、結果から開き直してください。',
  practice: '実際のボディやレンズではなく、練習用カメラで測定したものです。',
  pair,
  how: {
    title: '測定方法',
    focused: (holdTime) =>
      'カメラに正対したターゲットに、絞り開放の拡大ライブビューでピントを合わせ、そのまま固定しました。補正値を1つずつ合わせ、' +
      `そのつど${write.number(holdTime)}秒間の半押しで合焦ランプを観察しました。`,
    counts: 'ランプがすぐに点灯し、点灯し続けた値を域内と数えます。域内の値は1つの連続した安定域になり、その中心が補正値です。',
    aside:
      '安定域が補正範囲の先まで続くため、ピントをわずかにずらした状態で幅をもう一度測りました。ピントが合った状態の中心は、そこで見えた端から' +
      '幅の半分の位置です。区間には、端でのランプの揺らぎを見込んでいます。',
    decides: '半押しの判定は、所有者がファインダーで見たものです。最終的な判断は、修理先での測定によります。',
  },
  holds: {
    title: '半押しの一覧（順番どおり）',
    inFocus: (count) => `ピントが合った状態、${write.number(count)}回`,
    aside: (count) => `ピントをずらした状態、${write.number(count)}回`,
  },
  photographs: { title: '写真で分かったこと', ...shown },
  bench: '測定環境',
  facts: {
    body: 'ボディ',
    lens: 'レンズ',
    focalLength: '焦点距離',
    distance: '距離',
    range: '補正範囲',
    measured: '測定日',
  },
  named: (name, serial) => (serial === null ? name : `${name}、${serial}`),
  length: write.millimetres,
  distance: (length) => write.distance(length),
  range: within,
  day: write.day,
  sense: '補正値を大きくすると、ピントはカメラから遠ざかります。',
  table: { hold: '回', value: '値', light: 'ランプ', arrows: '矢印', counts: '扱い' },
  number: (hold) => write.number(hold),
  light: LIGHT,
  arrows: { none: '', left: '左', right: '右', balanced: '両方均等', lopsided: '不均等' },
  counts: { in: '域内', out: '域外' },
};
