// Japanese: the page that opens after the first install.
import type { WelcomeWords } from '../welcomeWords.ts';

export const words: WelcomeWords = {
  title: 'Sweepbookをインストールしました',
  button: 'ブラウザーの上部にあるSweepbookのボタンを押すと、ページの横にパネルが開きます。',
  hidden: 'ボタンが見当たらないときは、先にパズルのピースを押して、Sweepbookを固定してください。',
  shortcut: (keys) => `${keys}でも開きます。`,
  first: 'まずは練習用カメラをお試しください。実物のカメラの前に、合焦ランプと言葉に慣れることができます。',
  picture: 'ブラウザーの上部。パズルのピースとSweepbookのボタン',
};
