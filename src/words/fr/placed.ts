// French: what is estimated from a finished sweep.
import { writeSteps } from '../../sweep/scale.ts';
import type { BandWidth } from '../../optics/stepWorth.ts';
import type { PlacedWords } from '../placedWords.ts';
import { benchFault } from './benchFaults.ts';
import { BY_STEP } from './focusFell.ts';
import { write } from './write.ts';

const LOOKS: Readonly<Record<BandWidth['looks'], string>> = {
  narrow: 'C’est étroit. Vérifiez la lumière, et que la bague de mise au point n’a pas bougé.',
  plausible: 'C’est plausible.',
  wide: 'C’est large. Vérifiez l’ouverture, le contraste de la mire et la lumière.',
};

export const words: PlacedWords = {
  title: 'Estimations',
  placed: ({ chosen, onSubject, moved, share }) => {
    const front = `${write.percent(share)} de la profondeur de champ devant le sujet`;
    return moved === 0
      ? `${writeSteps(chosen)} place déjà environ ${front}.`
      : `${writeSteps(chosen)} au lieu de ${writeSteps(onSubject)}, décalé exprès pour placer ${front}. C’est une estimation.`;
  },
  width: ({ share, looks }, by) =>
    `La bande couvre environ ${write.percent(share)} de la profondeur de foyer, ${by === 'estimate' ? 'selon une estimation' : BY_STEP[by]}. ${LOOKS[looks]}`,
  fault: benchFault,
};
