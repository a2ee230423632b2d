// Japanese: what a backup would bring, and what in it cannot be read.
import type { Title } from '../../logbook/backup/items.ts';
import type { Compared, RestorePlan } from '../../logbook/backup/restore.ts';
import type { ListName } from '../../logbook/library.ts';
import type { SetAside } from '../../logbook/readLibrary.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

/** By the list's name in the file. */
const ITEM: Readonly<Record<ListName, string>> = {
  bodies: 'ボディ',
  lenses: 'レンズ',
  converters: 'コンバーター',
  situations: '組み合わせ',
  records: '測定',
  byHand: '手入力の値',
  entries: '設定の記録',
  notes: 'メモ',
  proofs: '写真での検証',
};

const COUNTED: readonly (readonly [keyof RestorePlan['counts'], (count: string) => string])[] = [
  ['new', (count) => `新規${count}件`],
  ['same', (count) => `ここと同じもの${count}件`],
  ['newer', (count) => `ここより新しいもの${count}件`],
  ['older', (count) => `ここより古いもの${count}件`],
  ['conflict', (count) => `ここと食い違うもの${count}件`],
  ['invalid', (count) => `読めないもの${count}件`],
];

const IS: Readonly<Record<Exclude<Compared, 'same'>, (title: string) => string>> = {
  new: (title) => `${title}：新規`,
  newer: (title) => `${title}：ここより新しい`,
  older: (title) => `${title}：ここより古い`,
  conflict: (title) => `${title}：ここと食い違う`,
};

/** What the backup holds, and what is only here. */
export function brings({ counts, onlyHere }: RestorePlan): readonly string[] {
  const parts = COUNTED.filter(([which]) => counts[which] > 0).map(([which, counted]) => counted(write.number(counts[which])));
  return [
    parts.length === 0 ? 'バックアップは空です。' : `バックアップの内容：${write.list(parts)}。`,
    `ここだけにあるものは${write.number(onlyHere)}件です。`,
  ];
}

function titled(title: Title): string {
  switch (title.by) {
    case 'name':
      return title.name;
    case 'situation':
      return `${pair({ lens: title.lens ?? '不明なレンズ', body: title.body ?? '不明なボディ' })}、${place(title)}`;
    case 'pair':
      return pair(title);
  }
}

export const item = (list: ListName, title: Title, is: Exclude<Compared, 'same'>): string => IS[is](`${titled(title)}（${ITEM[list]}）`);

export function setAside(why: SetAside['why']): string {
  switch (why.is) {
    case 'no list':
      return `このバックアップの「${ITEM[why.list]}」の一覧を読み込めません。`;
    case 'unfit':
      return why.field === null
        ? `${ITEM[why.list]}${write.number(why.at)}を読み込めません。`
        : `${ITEM[why.list]}${write.number(why.at)}は、「${why.field.slice(0, 60)}」に問題があり、読み込めません。`;
    case 'same id':
      return `${ITEM[why.list]}${write.number(why.at)}は、識別番号がほかと重なるため除きます。`;
    case 'taught words unread':
      return 'このバックアップの登録した言葉を読み込めません。聞き取りテストで登録し直してください。';
  }
}
