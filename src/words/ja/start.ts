// Japanese: the start and the next lens.
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { StartWords } from '../startWords.ts';
import { write } from './write.ts';

const HOW = { measured: '測定', entered: '設定' } as const;

export const words: StartWords = {
  found: {
    label: '記録帳の候補',
    none: 'なし',
    more: (count) => `記録帳にほか${write.number(count)}件`,
  },
  startWith: (lens) => `「${lens}」で開始`,
  startNew: (lens) => `新しいレンズ「${lens}」で開始`,
  unfit: '入力に不備があります。直すか、その欄でEscキーを押してください。',
  noName: '名前がなくても始められます。ほかの情報も、いつでも追加できます。',
  last: {
    label: '前回のレンズ',
    picked: '検索結果',
    notMeasured: '未測定',
    noValue: (at) => `値なし、${write.day(at)}`,
    value: (value, how, at) => line([`前回${writeSteps(value)}（${write.day(at)}${HOW[how]}）`, 'この値の近くから測定']),
  },
  nextLens: '次のレンズ',
  bench: '測定環境の準備',
  byHand: '測定せずに値を手入力',
  photographs: '写真で検証',
  practice: { open: '練習用カメラ', note: 'まず、この画面でランプの見え方と言葉に慣れてください。' },
  unnamed: {
    label: '名前を付ける',
    waits: (lens, value) => `${lens}（${value === null ? '値なし' : writeSteps(value)}）に、まだ名前がありません。`,
    others: (count) => `名前のないものが、ほかに${write.number(count)}件あります。`,
  },
  unfinished: {
    here: '途中の測定があります',
    elsewhere: '別のウィンドウで測定中です',
    about: (lens, details) => `${lens}、${details}。`,
    sofar: (holds) => `半押し${write.number(holds)}回まで済みました。失われたものはありません。`,
    goOn: '測定を続ける',
    follow: '測定を見る',
    end: 'ここまでで終了',
  },
  next: {
    title: '次のレンズ',
    field: '次のレンズの名前',
    placeholder: 'レンズ名',
    hint: '「Corvid 85」のように、焦点距離も入れてください。Enterキーで開始します。',
    planned: '計画の次',
    plan: '計画を見る',
  },
};
