// Japanese: one sweep of the logbook.
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { RecordWords } from '../recordWords.ts';
import { between } from './focusFell.ts';
import { place } from './subject.ts';
import { seen } from './verdict.ts';
import { write } from './write.ts';

const COUNTS = { in: '域内に数えます。', out: '域外に数えます。' } as const;

const interval = ({ from, to }: { readonly from: number; readonly to: number }): string => (from === to ? write.signed(from, 1) : between(from, to));

export const words: RecordWords = {
  title: '記録帳',
  gone: 'この記録は、もう記録帳にありません。',
  details: (subject, finished) => line([place(subject), subject.body, write.day(finished)]),
  bench: '測定環境',
  conditions: {
    open: (noted) => (noted ? '明るさ、温度、メモを変更' : '明るさ、温度などを記録'),
    form: '測定時の状況',
    save: 'この測定に保存',
    saved: '保存しました。',
  },
  replay: {
    open: '半押しごとに再生',
    title: '再生',
    at: (step, last) => `再生：${write.number(step)}/${write.number(last)}`,
    earlier: '前へ',
    later: '次へ',
    play: '再生',
    halt: '一時停止',
    sure: (known) => `中心の95%区間は${interval(known)}です。`,
    narrowing: (first, last) => `推定の絞り込み：中心は、最初の半押しの前は${interval(first)}、最後は${interval(last)}でした。`,
    opened: '最初の半押しの前。',
    held: ({ number, value, light, arrows, counts }) => {
      const hold = `${write.number(number)}回目の半押し、${writeSteps(value)}：${seen({ light, arrows })}。`;
      return light === 'untold' ? hold : `${hold}${COUNTS[counts]}`;
    },
    takenBack: (left) => `取り消しました。残りは${write.number(left)}回です。`,
    begunAfresh: 'ピントが動いていたため、測定をやり直しました。',
    ended: '測定の終わり。',
    checking: '判定が食い違ったため、ピントの確認を求めました。',
    turning: 'ピントをずらすよう求めました。',
    offered: '結果を示しました。',
    next: (value, why) => `次は${writeSteps(value)}：${why}。`,
  },
};
