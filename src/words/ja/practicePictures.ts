// Japanese: pictures that the practice camera takes.
import type { PracticePicturesWords } from '../practicePicturesWords.ts';
import { write } from './write.ts';

const STANDS = 'ターゲットと傾斜スケールから2\u00a0m離れ、85\u00a0mm、f/1.8で撮影します。';

export const words: PracticePicturesWords = {
  title: '練習用の画像',
  simulated: '模擬画像です。練習用カメラが描いたもので、実際のカメラとは関係がなく、何も保存されません。',
  about: {
    one: `練習用カメラが、この値でAFの画像を1枚撮影します。${STANDS}`,
    check: `練習用カメラが、ライブビューで1枚、続けてこの値でAFの画像を6枚撮影します。${STANDS}`,
    bracket: `練習用カメラが、ライブビューで1枚、続けてブラケットの各値で1枚ずつ撮影します。${STANDS}`,
  },
  take: { one: '撮影する', check: '撮影する', bracket: '撮影する' },
  picture: (number) => `練習用の画像${write.number(number)}`,
  another: '別の練習用カメラ',
  truth: {
    title: 'この練習用カメラの真の値',
    told: (centre, step) => `真の中心は${write.signed(centre, 1)}です。1ステップで、ピントはターゲットの位置で${write.unit(step, 'millimeter', 1)}動きます。`,
  },
};
