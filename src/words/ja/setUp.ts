// Japanese: the set-up walk.
import type { StepOf } from '../../optics/setUp/step.ts';
import type { StepId } from '../../optics/setUp/stepIds.ts';
import type { Each, SetUpWords } from '../setUpWords.ts';
import { sentences } from './sentence.ts';
import { DRAWN } from './stepsDrawn.ts';
import { SHOWN } from './stepsShown.ts';
import { SPOKEN } from './stepsSpoken.ts';
import { write } from './write.ts';

const DONE = '準備ができました。最初の半押しへ進めます。';

const of = <Id extends StepId>(each: Each, step: StepOf<Id> & { readonly id: Id }): string => each[step.id](step);

export const words: SetUpWords = {
  title: '準備\u200bガイド',
  progress: { label: '進み具合', at: (step, all) => `手順${write.number(step)}/${write.number(all)}`, done: 'すべての手順が済みました' },
  noAperture: '先に、測定環境で開放絞りを入力してください。',
  speak: (what) => (what === 'done' ? DONE : of(SPOKEN, what)),
  show: (step) => of(SHOWN, step),
  pictures: DRAWN,
  step: {
    label: '手順',
    before: '以前に済んでいます。',
    liveView: { ask: 'ライブビューで最も鮮明な位置ですか？', sharp: '最も鮮明', not: 'まだ鮮明でない' },
    keep: 'この値を保存',
    kept: (reading) => sentences('保存しました', reading),
  },
  done: {
    label: '準備完了',
    tooLate: '最初の半押しが済んでいるため、この測定に準備の記録は残りません。次の測定の前に行ってください。',
  },
  leadsTo: '最初の半押しへ',
  means: '済み：次の手順',
  also: 'そのほかにできること',
};
