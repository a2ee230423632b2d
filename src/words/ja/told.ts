// Japanese: whose sweep it is.
import { byUnit } from '../countryInUse.ts';
import { line } from '../line.ts';
import type { Part, ToldWords } from '../toldWords.ts';
import { place, within } from './subject.ts';
import { write } from './write.ts';

const PARTS: Readonly<Record<Part, string>> = { body: 'ボディ', lens: 'レンズ', length: '焦点距離', distance: '距離', scale: '範囲', more: 'その他' };

export const words: ToldWords = {
  line: '測定の対象',
  parts: PARTS,
  open: (part) => `${PARTS[part]}：未入力`,
  is: (part, value) => `${PARTS[part]}：${value}`,
  chip: {
    lens: (lens, converter) => (converter === null ? lens : `${lens} + ${converter}`),
    length: write.millimetres,
    distance: (length) => write.distance(length),
    scale: within,
    all: line,
  },
  done: '完了',
  fewer: '閉じる',
  body: { choose: 'ボディ', another: '別のボディ…', name: 'ボディの名前', hint: '見分けのつく名前を付けてください。' },
  lens: { choose: 'レンズ', another: '別のレンズ…', name: 'レンズの名前', hint: '「Corvid 85」のように、焦点距離も入れてください。' },
  length: {
    field: '焦点距離（mm）',
    hint: 'レンズに刻まれた値。',
    converted: 'レンズに刻まれた値（コンバーターなし）。',
    ends: 'ズームのどちらの端ですか？',
  },
  distance: {
    get field() {
      return byUnit({ m: 'ターゲットまでの距離（m）', ft: 'ターゲットまでの距離（ft）' });
    },
    hint: 'ふだん撮影する距離を入力します。空欄なら、慣例どおり焦点距離の50倍です。',
  },
  scale: { legend: '補正範囲', from: '下限', to: '上限', step: '刻み' },
  arrows: {
    label: '合焦ランプの両脇の矢印',
    is: { absent: '矢印なし', 'right-is-up': '右矢印：+方向へ', 'right-is-down': '右矢印：\u2212方向へ' },
  },
  converter: { label: 'コンバーター', none: 'なし' },
  subject: (subject) => ({ lens: subject.lens, details: line([place(subject), subject.body]) }),
  unnamed: ({ lens, body, focalLength }) => ({
    lens: lens?.name ?? '名前なし',
    details: line([focalLength !== null && write.millimetres(focalLength), body?.name ?? null]) || '結果を閉じる前に名前を付けてください',
  }),
  whose: {
    title: 'どのレンズの結果ですか？',
    body: 'ボディ',
    lens: 'レンズ（焦点距離も）',
    length: '焦点距離（mm）',
    hint: '例：「Corvid 85 f/1.8」。',
    ends: 'ズームのどちらの端でしたか？',
    keep: 'この名前で保存',
    later: '名前がなくても保存されています。あとで付けられます。',
    missing: {
      body: 'ボディの名前も入力してください。',
      lens: 'レンズの名前を入力してください。',
      length: '焦点距離を入力するか、レンズの名前に含めてください。',
    },
  },
};
