// Japanese: what stands before the catalogue can be read.
import type { FirstWords } from '../firstWords.ts';

export const words: FirstWords = {
  name: 'Sweepbook',
  places: 'その他',
  place: { logbook: '記録帳', plan: '計画', kit: '機材', settings: '設定', help: 'ヘルプ' },
  field: 'レンズを探すか、新しいレンズの名前を入力',
  placeholder: 'レンズ名（新規も可）',
  start: '開始',
  back: '戻る',
  dismiss: '閉じる',
  announcement: 'お知らせ',
  opening: '読み込み中…',
  unread: 'パネルの一部を読み込めません。パネルを閉じて、開き直してください。失われたものはありません。',
  notRead: '保存内容を読み込めていないため、何も保存できません。このパネルを閉じて、開き直してください。',
  mark: { word: '音声オフ', press: '音声オフ：音声操作をオンにする' },
};
