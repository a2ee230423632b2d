// Japanese: the practice camera.
import type { PracticeWords } from '../practiceWords.ts';
import { write } from './write.ts';

const ARROWS = { none: [], left: ['左矢印'], right: ['右矢印'], both: ['左矢印', '右矢印'] } as const;

export const words: PracticeWords = {
  title: '練習用カメラ',
  about: '模擬のボディとレンズで、合焦ランプがこの画面に出ます。目、言葉、スイッチに慣れてください。最後に真の安定域を示します。',
  arrows: 'ランプの両脇に矢印を出す',
  past: '安定域が補正範囲を超える',
  odd: '不調がある：原因を探す',
  begin: '練習する',
  train: '目の練習',
  pictures: '練習用の画像',
  light: (lit, arrows) => `練習用ランプ：${write.list([lit ? '点灯' : '消灯', ...ARROWS[arrows]])}`,
};
