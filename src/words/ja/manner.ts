// Japanese: how carefully and in which order. The figures are those of simulated sweeps on a range of 41 corrections.
import type { MannerWords } from '../mannerWords.ts';

export const words: MannerWords = {
  care: '精度',
  cares: {
    quick: { label: '簡易', note: '中心が±1ステップ以内に決まったら終了。約9回、1分半。' },
    standard: { label: '標準', note: '安定域の両端も確認。約10回、2分弱。' },
    thorough: { label: '入念', note: '両端の値を、確かになるまで繰り返し確認。約13回、2分。' },
  },
  order: '進め方',
  orders: {
    fewest: { label: '最少回数', note: '時間あたりに最も多くのことが分かる値を選びます。' },
    outward: { label: '順送り', note: '1つずつ外側へ進むので、ランプの変化を追えます。回数は増えます。' },
  },
};
