// Spanish: what is estimated from a finished sweep.
import { writeSteps } from '../../sweep/scale.ts';
import type { BandWidth } from '../../optics/stepWorth.ts';
import type { PlacedWords } from '../placedWords.ts';
import { benchFault } from './benchFaults.ts';
import { BY_STEP } from './focusFell.ts';
import { write } from './write.ts';

const LOOKS: Readonly<Record<BandWidth['looks'], string>> = {
  narrow: 'Es estrecha. Compruebe la luz y que no se haya movido el anillo de enfoque.',
  plausible: 'Es verosímil.',
  wide: 'Es ancha. Compruebe la abertura, el contraste de la diana y la luz.',
};

export const words: PlacedWords = {
  title: 'Estimaciones',
  placed: ({ chosen, onSubject, moved, share }) => {
    const front = `el ${write.percent(share)} de la profundidad de campo delante del motivo`;
    return moved === 0
      ? `${writeSteps(chosen)} ya deja aproximadamente ${front}.`
      : `${writeSteps(chosen)} en lugar de ${writeSteps(onSubject)}, desviado a propósito para dejar ${front}. Es una estimación.`;
  },
  width: ({ share, looks }, by) =>
    `La banda abarca cerca del ${write.percent(share)} de la profundidad de foco, ${by === 'estimate' ? 'según una estimación' : BY_STEP[by]}. ${LOOKS[looks]}`,
  fault: benchFault,
};
