// Japanese: the plan of a job.
import type { Change } from '../../logbook/plan/changes.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { seconds, type Seconds } from '../../units.ts';
import { byUnit } from '../countryInUse.ts';
import { line } from '../line.ts';
import type { PlanWords } from '../planWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const CHANGES: readonly (readonly [keyof Change, string])[] = [
  ['tripod', '三脚の移動'],
  ['body', 'ボディの交換'],
  ['lens', 'レンズの交換'],
  ['converter', 'コンバーターの着脱'],
  ['zoom', 'ズームの変更'],
];

/** In whole minutes, one at least. */
function minutes(time: Seconds): string {
  const whole = Math.max(1, Math.round(time / 60));
  return whole < 60 ? write.unit(whole, 'minute') : write.duration(seconds(whole * 60));
}

export const words: PlanWords = {
  title: '計画',
  replaces: '新しい計画は、古い計画と置き換わります。測定した内容は記録帳に残ります。',
  form: {
    bodies: 'ボディ',
    lenses: 'レンズ',
    converters: '併用するコンバーター',
    zooms: 'ズーム',
    ends: { both: '両端', wide: '広角端のみ', tele: '望遠端のみ' },
    distances: {
      get label() {
        return byUnit({ m: '距離（m）', ft: '距離（ft）' });
      },
      get hint() {
        return byUnit({ m: '例：2.5 8。空欄なら、それぞれ焦点距離の50倍です。', ft: '例：8 25。空欄なら、それぞれ焦点距離の50倍です。' });
      },
      get fault() {
        return byUnit({
          m: '0.05〜500の距離をメートルで、空白で区切って入力してください。',
          ft: '0.17〜1640の距離をフィートで、空白で区切って入力してください。',
        });
      },
    },
    make: '計画を作成',
    fault: (fault) => {
      switch (fault.is) {
        case 'no body':
          return 'ボディを1台以上選んでください。';
        case 'no lens':
          return 'レンズを1本以上選んでください。';
        case 'no focal length':
          return `機材で${fault.lens}の焦点距離を入力してから、選び直してください。`;
      }
    },
    unfit: '選択内容が正しくありません。確かめてください。',
  },
  measured: '測定済み',
  next: '次を測定',
  underWay: '測定中です。先に最初の画面で終了してください。',
  anew: '計画を作り直す',
  pace: ({ perSweep, sweeps }) =>
    sweeps === 0
      ? `最初の測定を終えるまで、所要時間は1回${minutes(perSweep)}として計算します。`
      : `所要時間は、これまでのペース（1回${minutes(perSweep)}）で計算します。`,
  progress: ({ done, all, left, next }) =>
    next === null
      ? [`${write.number(all)}件中${write.number(done)}件を測定しました。`, '計画は完了です。']
      : [`${write.number(all)}件中${write.number(done)}件を測定しました。残り約${minutes(left)}です。`, `次：${next.lens}、${place(next)}、${next.body}。`],
  stations: '組み合わせ',
  details: (subject) => line([place(subject), subject.body]),
  is: { next: '次', 'to do': '未測定' },
  done: (value) => (value === null ? '済み：値なし' : `済み：${writeSteps(value)}`),
  before: (change) => {
    const wanted = CHANGES.filter(([part]) => change[part]).map(([, what]) => what);
    return wanted.length === 0 ? '' : `先に：${write.list(wanted)}。`;
  },
  toEnter: '設定する値',
  toEnterFor: (subject) => `${subject.lens}、${place(subject)}、${subject.body}に設定する値`,
};
