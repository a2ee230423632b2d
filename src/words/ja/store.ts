// Japanese: what went wrong with what lies on this computer. What the browser says stands in brackets, in its own words.
import type { StoreWords } from '../storeWords.ts';

export const words: StoreWords = {
  fault: ({ is, why }) =>
    is === 'not read'
      ? `保存内容を読み込めません（${why ?? '応答なし'}）。このパネルを閉じて、開き直してください。`
      : `今は何も保存できません（${why ?? '応答なし'}）。このパネルを開いたまま、ディスクの空きを増やしてください。` +
        '内容はすべてここに残っていて、保存できるようになりしだい保存します。',
  tryNow: '今すぐ試す',
  taught: {
    'not read': '登録した言葉を読み込めません。聞き取りテストで登録し直してください。ほかの内容に影響はありません。',
    'not kept': '登録した言葉を保存できません。ディスクの空きを増やしてから、もう一度言ってください。',
    'not erased': '登録した言葉を今は消去できません。もう一度試してください。',
  },
};
