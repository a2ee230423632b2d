// English: what is estimated from a finished sweep.
import { writeSteps } from '../../sweep/scale.ts';
import type { BandWidth } from '../../optics/stepWorth.ts';
import type { PlacedWords } from '../placedWords.ts';
import { benchFault } from './benchFaults.ts';
import { BY_STEP } from './focusFell.ts';
import { write } from './write.ts';

const LOOKS: Readonly<Record<BandWidth['looks'], string>> = {
  narrow: 'That is narrow. Check the light, and check that the focus ring did not move.',
  plausible: 'That is plausible.',
  wide: 'That is wide. Check the aperture, the contrast of the target and the light.',
};

export const words: PlacedWords = {
  title: 'Estimates',
  placed: ({ chosen, onSubject, moved, share }) => {
    const front = `${write.percent(share)} of the depth of field in front of the subject`;
    return moved === 0
      ? `${writeSteps(chosen)} already puts about ${front}.`
      : `${writeSteps(chosen)} instead of ${writeSteps(onSubject)}, shifted on purpose to put ${front}. This is an estimate.`;
  },
  width: ({ share, looks }, by) =>
    `The band spans about ${write.percent(share)} of the depth of focus, ${by === 'estimate' ? 'an estimate' : BY_STEP[by]}. ${LOOKS[looks]}`,
  fault: benchFault,
};
