// Japanese: what the session itself has to say.
import { writeSteps } from '../../sweep/scale.ts';
import type { SessionWords } from '../sessionWords.ts';
import { pair, within } from './subject.ts';
import { write } from './write.ts';

export const words: SessionWords = {
  stored: {
    reading: (share) => `記録帳を読み込んでいます：${write.percent(share)}`,
    readAgain: '読み込み直す',
    tooNew: '保存内容は、より新しいSweepbookで書かれています。このSweepbookを更新してください。それまでは何も変更しません。',
    spoilt: (key, field, place) =>
      `「${key}」の保存内容は${field === null ? '' : `「${field}」に問題があり、`}使えません。そのまま「${place}」に保管し、残りはすべて使えます。`,
    unread: '今は保存内容を読み込めません。もう一度試してください。',
    notOnDisk: '画面には出ていますが、まだディスクに保存されていません。このパネルを開いたままにしてください。成功するまで保存を試みます。',
  },
  copies: {
    fault: {
      'copies unread': '毎日の控えを読み込めません。保存内容に影響はありません。',
      'copy unread': 'この控えを読み込めません。別の控えを選んでください。',
      'copy not kept': '毎日の控えを保存できません。ディスクの空きを増やしてください。次の起動時にもう一度試みます。',
    },
    offered: (at) => `保存内容がなくなっていますが、${write.dayAndTime(at)}の控えがあります。`,
    bringBack: '控えから戻す',
  },
  bringing: {
    brokenOff: '記録帳の取り込みが途中で終わったため、すべて取り込む前の状態に戻しました。もう一度取り込んでください。',
    notCopied: '取り込み前の控えを作れなかったため、何も取り込みませんでした。ディスクの空きを増やしてから、もう一度試してください。',
    tooNew: 'この控えは、より新しいSweepbookで作られています。このSweepbookを更新してから、もう一度試してください。',
  },
  sync: {
    fault: {
      'no sync':
        '今はブラウザーの同期が働かないため、最新の値がほかのコンピューターに届きません。値はすべてここに保存されています。パネルが開いている間、自動で再試行します。',
    },
    unread: '別のコンピューターからの値に、ここで読めないものがあります。両方のSweepbookを更新してください。',
    noRoom: 'ブラウザーの同期に、古い値を入れる空きがありません。値はここに保存されていて、バックアップにも入ります。',
    notTakenOut: 'このコンピューターの値を、ブラウザーの同期から取り除けませんでした。',
    tryAgain: '再試行',
    overtaken: ({ value, old, more, ...subject }) => {
      const others = more === 0 ? '' : `同じような値が、ほかに${write.number(more)}件あります。`;
      return (
        `別のコンピューターに、${pair(subject)}のより新しい値があります：${writeSteps(old)}に代わり${writeSteps(value)}。${others}` +
        'どちらも履歴に残ります。カメラの値を確かめてください。'
      );
    },
  },
  erasing: {
    elsewhere: '別のウィンドウで測定中です。聞き取った言葉はそのウィンドウで消去するか、測定をこちらに引き継いでください。',
    copiesUnread: '聞き取った言葉を消去しましたが、毎日の控えを今は読み込めません。もう一度試してください。',
    copyLeft: '聞き取った言葉を消去しましたが、毎日の控えの1つに残っています。もう一度試してください。',
    notOnDisk: '画面からは消えましたが、まだディスクに残っています。このパネルを開いたままにしてください。成功するまで消去を試みます。',
  },
  proofs: {
    situationGone: 'この組み合わせはもう機材にありません。別の組み合わせを選んで、保存し直してください。',
    unfit: 'この数値は保存できません。画像を取り込み直してください。',
    gone: 'この写真での検証は、もう記録帳にありません。',
    copiesUnread: '毎日の控えを今は読み込めないため、数値はまだ消去されていません。もう一度試してください。',
    copyLeft: '毎日の控えの1つから取り除けないため、数値はまだ消去されていません。もう一度試してください。',
    crops: {
      'crops unread': '切り出し画像を今は読み込めません。数値に影響はありません。',
      'crops not kept': '数値は保存しましたが、切り出し画像を入れる空きがありません。ディスクの空きを増やしてください。',
      'crops not erased': '切り出し画像を今は消去できません。もう一度試してください。',
    },
  },
  byHand: (fault) => {
    switch (fault.is) {
      case 'ends off the scale':
        return `両端とも${within(fault.scale)}の補正値を入力してください。`;
      case 'off the scale':
        return `${within(fault.scale)}の補正値を入力してください。`;
      case 'outside the ends':
        return '両端の間の値を選んでください。';
    }
  },
  recordGone: 'この記録は、もう記録帳にありません。',
  unexpected: (why) => `予期しない不具合が起きました（${why}）。測定は続きます。記録した内容は失われていません。`,
  became: {
    'not here': '受け付けませんでした。別のウィンドウで測定中です。こちらで行うには引き継いでください。',
    'asked back': '聞き返し',
    'said again': '再読み上げ',
    help: 'ヘルプ',
    'looked up': '検索',
    'not taken': '受け付けず',
    'not clear': '聞き取れず',
    'too late': 'この手順より前に始まったため、受け付けませんでした',
  },
  farView: { on: 'オン', off: 'オフ' },
  missed: {
    'amid talk': '話し声と重なったため、受け付けませんでした。もう一度言ってください。',
    'beside the panel': 'パネルの読み上げと重なったため、受け付けませんでした。もう一度言ってください。',
  },
  untold: {
    noScale: '補正範囲の下限、上限、刻みを整数で入力してください。',
    noSweep: 'この測定はここでは変更できません。別のウィンドウで測定中なら、先に引き継いでください。',
    holdFirst: 'この半押しを終えてから、入力し直してください。',
    offTheScale: (value) =>
      `${writeSteps(value)}は半押し済みで、この範囲に入っていません。その半押しを取り消すか、${writeSteps(value)}を含む範囲にしてください。`,
    arrowsSeen: 'これまでの半押しに矢印が含まれています。先にその半押しを取り消すか、矢印ありのままにしてください。',
    kitGone: 'これはもう機材にありません。別のものを選んでください。',
    resultGone: 'この結果はもう機材にありません。記録帳で探してください。',
    missing: {
      body: '先にボディの名前を入力してください。',
      lens: '先にレンズの名前を入力してください。',
      length: '焦点距離も入力するか、「Corvid 85」のように名前に含めてください。',
    },
  },
  standIn: { body: '名前のないボディ', lens: (opened) => `名前のないレンズ、${write.dayAndTime(opened)}` },
  unplanned: {
    'kit gone': 'そのボディ、レンズまたは距離はもう機材にありません。別のものを選んでください。',
    'value off the scale': 'ボディの現在の値が、補正範囲に入っていません。値を入力し直してください。',
    'sweep not kept yet': 'その測定はまだ記録帳にありません。少し待って、もう一度試してください。',
    'no width': 'その測定には、推定に使える幅がありません。この組み合わせを測定し直してください。',
  },
  unbegun: {
    'under way': '測定中です。先に終了するか、最初の画面に戻ってください。',
    'begun elsewhere': '別のウィンドウで測定が始まりました。先にそちらを終了してください。',
  },
  practice: { body: '練習用カメラ', lens: '練習用レンズ' },
};
