// Japanese: the logbook's list.
import type { DueReason } from '../../logbook/due.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { LogbookWords } from '../logbookWords.ts';
import { focusFell } from './focusFell.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const DAYS_IN_A_MONTH = 30.44;

const since = (happened: string, note: string): string =>
  note === '' ? `測定のあとに${happened}がありました。` : `測定のあとに${happened}がありました（${note.replace(/[.。]$/, '')}）。`;

function due(reason: DueReason): string {
  switch (reason.why) {
    case 'age':
      return reason.days < 60
        ? `最後の測定は${write.number(reason.days)}日前です。`
        : `最後の測定は${write.number(Math.floor(reason.days / DAYS_IN_A_MONTH))}か月前です。`;
    case 'firmware':
      return since('ファームウェア更新', reason.note);
    case 'service':
      return since('修理・点検', reason.note);
    case 'temperature':
      return `測定時は${write.unit(reason.before, 'celsius')}、今は${write.unit(reason.now, 'celsius')}です。`;
    case 're-check':
      return `前回の再確認で、設定済みの${writeSteps(reason.value)}ではランプが安定しませんでした。`;
    case 'drift':
      return `最近2回の測定に${write.number(reason.apart, 1)}ステップの差があります。`;
    case 'photographs':
      return `写真でずれが見つかりました。${writeSteps(reason.value)}でのピント位置は${focusFell(reason.bias)}です。`;
  }
}

export const words: LogbookWords = {
  title: '記録帳',
  find: { label: 'ボディ、レンズ、焦点距離、距離で検索', short: 'レンズを検索', found: '結果', aloud: '読み上げ' },
  found: (count) => `${write.number(count)}件`,
  files: 'バックアップと表',
  practised: (count) => `練習の測定（${write.number(count)}）`,
  filter: {
    open: (on) => (on ? '絞り込み中' : '絞り込み'),
    body: 'ボディ',
    everyBody: 'すべてのボディ',
    show: '表示',
    is: {
      all: '使用中すべて',
      'due again': '要再測定',
      'never measured': '未測定',
      'not entered': '測定済み、未設定',
      retired: '使用終了',
    },
    temperature: { label: '現在の温度（°C）', hint: '温度が大きく違うときに測定した値は、要再測定になります。' },
  },
  nothing: {
    of: {
      all: '記録帳に使用中のものはありません。',
      'due again': '要再測定のものはありません。',
      'never measured': 'すべて測定済みです。',
      'not entered': '測定したものはすべて設定済みです。',
      retired: '使用終了のものはありません。',
    },
    like: (typed) => `記録帳に「${typed}」に合うものがありません。文字を減らして試してください。`,
  },
  backUp: (reminder) =>
    reminder.is === 'none yet'
      ? `${write.number(reminder.unsaved)}件の記録に、まだバックアップがありません。今すぐ作成してください。`
      : `最新のバックアップは${write.number(reminder.days)}日前のもので、${write.number(reminder.unsaved)}件の記録が入っていません。今すぐ作り直してください。`,
  noValue: 'なし',
  more: (count) => `${write.number(count)}件の続きを表示`,
  details: (subject) => line([place(subject), subject.body]),
  standing: ({ state, at, value, measured }) => {
    if (state === 'never measured' || at === null) return '未測定';
    if (measured?.service) return `要点検、${write.day(measured.at)}測定`;
    if (value === null) return `値なし、${write.day(at)}`;
    switch (state) {
      case 'measured':
        return `${write.day(at)}測定、未設定`;
      case 'entered':
        return `${write.day(at)}設定`;
      case 'differ':
        return `${write.day(at)}設定、ただし測定値は${writeSteps(measured?.chosen ?? value)}`;
    }
  },
  due,
  dueAgain: (reason) => `要再測定：${due(reason)}`,
  result: (outcome) => {
    switch (outcome.found) {
      case 'band':
        return writeSteps(outcome.chosen);
      case 'carried over':
        return outcome.service ? (outcome.side === 'high' ? '範囲より上' : '範囲より下') : writeSteps(outcome.chosen);
      case 'past the limit':
        return '限界の先';
      case 'beyond the scale':
        return outcome.side === 'above' ? '範囲より上' : '範囲より下';
      case 'nothing':
        return '安定域なし';
    }
  },
  day: write.day,
};
