// Japanese: backups, tables, and the copies that the browser keeps.
import type { FilesWords } from '../filesWords.ts';
import { brings, item, setAside } from './restoring.ts';
import { columnSaid, lineFault } from './tableFaults.ts';
import { write } from './write.ts';

const UNCHANGED = 'まだ何も変更していません。';

export const words: FilesWords = {
  title: 'バックアップと表',
  drop: '選ぶか、ここにドロップ。',
  unread: 'このファイルを読み込めません。元の場所にあるか確かめて、選び直してください。',
  howFar: {
    writing: (share) => `バックアップを書き出しています：${write.percent(share)}`,
    reading: (share) => `ファイルを読み込んでいます：${write.percent(share)}`,
    comparing: (share) => `今の内容と比べています：${write.percent(share)}`,
    bringing: (share) => `取り込んでいます：${write.percent(share)}`,
  },
  backup: {
    title: 'バックアップ',
    about: '機材、記録帳、登録した言葉が入ります。写真の切り出し画像は入りません。',
    newest: (made) => (made === null ? 'バックアップはまだ作成していません。' : `最新のバックアップは${write.day(made)}のものです。`),
    write: 'バックアップを作成',
    withoutWords: 'バックアップを作成しましたが、登録した言葉は今読み込めないため、入っていません。',
  },
  reminder: {
    label: 'バックアップ',
    unsaved: (count) => `${write.number(count)}件の記録が、まだバックアップに入っていません。`,
    uninstall: 'Sweepbookを削除すると、記録帳も消えます。',
    notNow: 'あとで',
  },
  restore: {
    choose: 'バックアップから取り込む',
    fault: {
      'too large': 'このファイルはバックアップとしては大きすぎます。Sweepbookで作成したファイルを選んでください。',
      'no backup': 'これはバックアップではありません。Sweepbookで作成したファイルを選んでください。',
      damaged: 'このファイルは途中で切れているか、壊れています。別のバックアップを選んでください。',
      'no logbook': 'このファイルには記録帳がありません。Sweepbookで作成したファイルを選んでください。',
      'no version': 'このファイルの記録帳には、版の情報がありません。Sweepbookで作成したファイルを選んでください。',
      newer: 'このバックアップは、より新しいSweepbookで作成されています。先にこのSweepbookを更新してください。',
    },
    plan: (made, plan) => [`作成日：${write.day(made)}。`, ...brings(plan), UNCHANGED],
    taught: (count) => `登録した言葉も${write.number(count)}語入っています。統合すると、ここにも登録のある言葉はそのまま残ります。`,
    conflict: '統合すると、食い違う記録は両方残ります。食い違う機材は、あとから変更したほうを使います。',
    each: '内訳',
    item,
    more: (count) => `ほか${write.number(count)}件`,
    aside: setAside,
    join: 'ここの内容と統合する',
    replace: 'すべて置き換える',
    leave: '何も変更しない',
    done: '完了しました。変更前の控えを下に残しました。',
    withoutWords: (why) => `記録帳を取り込みました。${why}`,
  },
  table: {
    title: '表',
    about: '測定、設定、写真での検証を1行ずつ書き出した、表計算ソフト用のファイルです。半押しの記録はバックアップだけに入ります。',
    write: '表を書き出す',
    choose: '表を取り込む',
    fault: (fault) => {
      switch (fault.is) {
        case 'open quote':
          return `${write.number(fault.line)}行目の引用符が閉じていません。閉じてから、ファイルを選び直してください。`;
        case 'stray quote':
          return `${write.number(fault.line)}行目で、項目の途中に引用符があります。削除してから、ファイルを選び直してください。`;
        case 'empty':
          return 'この表は空です。見出しの行と、値ごとに1行が必要です。';
        case 'too many lines':
          return `この表は${write.number(fault.most)}行を超えています。小さく分けてください。`;
      }
    },
    meanings: '見出しの意味',
    passedOver: '使わない',
    column: (number) => `${write.number(number)}列目`,
    meaning: ({ key, heading }) => columnSaid(key, heading),
    missing: (meanings) => `次の項目にあたる見出しを選んでください：${write.list(meanings)}。`,
    plan: ({ added, same, withoutValue, faults, newKit }) => [
      `${write.list([`新規${write.number(added)}件`, `既存${write.number(same)}件`, `値なし${write.number(withoutValue)}件`, `問題あり${write.number(faults.length)}件`])}。`,
      ...(newKit.length === 0 ? [] : [`新しい機材：${write.list(newKit)}。`]),
      UNCHANGED,
    ],
    line: lineFault,
    more: (count) => `ほかに問題のある行${write.number(count)}行`,
    bring: '問題のない行を取り込む',
    done: '表を記録帳に取り込みました。',
  },
  copies: {
    title: 'このブラウザーの控え',
    none: 'まだありません。',
    unread: '毎日の控えを読み込めません。保存内容に影響はありません。',
    bringBack: (at) => `${write.dayAndSecond(at)}に戻す`,
    done: 'すべてその時点の状態に戻しました。',
  },
};
