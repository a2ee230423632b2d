// Japanese: what is estimated from a finished sweep.
import { writeSteps } from '../../sweep/scale.ts';
import type { BandWidth } from '../../optics/stepWorth.ts';
import type { PlacedWords } from '../placedWords.ts';
import { benchFault } from './benchFaults.ts';
import { BY_STEP } from './focusFell.ts';
import { write } from './write.ts';

const LOOKS: Readonly<Record<BandWidth['looks'], string>> = {
  narrow: '狭すぎます。照明と、フォーカスリングが動いていないことを確かめてください。',
  plausible: '妥当な幅です。',
  wide: '広すぎます。絞り、ターゲットのコントラスト、照明を確かめてください。',
};

export const words: PlacedWords = {
  title: '推定',
  placed: ({ chosen, onSubject, moved, share }) =>
    moved === 0
      ? `${writeSteps(chosen)}のままで、被写界深度の約${write.percent(share)}が被写体の手前に入ります。`
      : `${writeSteps(onSubject)}に代えて${writeSteps(chosen)}とし、被写界深度の${write.percent(share)}を意図して被写体の手前に入れます。これは推定です。`,
  width: ({ share, looks }, by) => `安定域の幅は焦点深度の約${write.percent(share)}です（${by === 'estimate' ? '推定' : BY_STEP[by]}）。${LOOKS[looks]}`,
  fault: benchFault,
};
