// Japanese: the words a person is taught to say, as they are written. They were chosen to be far apart in sound, and none of them is
// another with a part in front of it, as "unstable" is "stable" in Japanese, too.
import type { Word } from '../../../sweep/inputs.ts';

export const JAPANESE_TAG = 'ja-JP';

export const TAUGHT: Record<Word, string> = {
  solid: 'バッチリ',
  delayed: '遅れ',
  flicker: 'チカチカ',
  nothing: 'つかない',
  left: '左',
  right: '右',
  balanced: '均等',
  lopsided: '偏り',
  holding: 'スタート',
  undo: '取り消し',
  repeat: 'もう一度',
  pause: 'ポーズ',
  resume: '再開',
  skip: 'スキップ',
  accept: '確定',
  'go on': '続ける',
  set: 'セット',
  same: '同じ',
  shifted: 'ズレた',
  finish: '終了',
  help: 'ヘルプ',
  entered: '入力',
  next: '次へ',
  back: '戻る',
  'far view': '大画面',
};
