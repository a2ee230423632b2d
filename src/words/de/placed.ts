// German: what is estimated from a finished sweep.
import { writeSteps } from '../../sweep/scale.ts';
import type { BandWidth } from '../../optics/stepWorth.ts';
import type { PlacedWords } from '../placedWords.ts';
import { benchFault } from './benchFaults.ts';
import { BY_STEP } from './focusFell.ts';
import { write } from './write.ts';

const LOOKS: Readonly<Record<BandWidth['looks'], string>> = {
  narrow: 'Das ist schmal. Prüfen Sie die Beleuchtung und ob sich der Fokusring bewegt hat.',
  plausible: 'Das ist plausibel.',
  wide: 'Das ist breit. Prüfen Sie die Blende, den Kontrast der Tafel und die Beleuchtung.',
};

export const words: PlacedWords = {
  title: 'Schätzungen',
  placed: ({ chosen, onSubject, moved, share }) => {
    const front = `${write.percent(share)} der Schärfentiefe vor das Motiv`;
    return moved === 0
      ? `${writeSteps(chosen)} legt schon etwa ${front}.`
      : `${writeSteps(chosen)} statt ${writeSteps(onSubject)}: absichtlich versetzt, das legt ${front}. Das ist eine Schätzung.`;
  },
  width: ({ share, looks }, by) =>
    `Das Band umfasst etwa ${write.percent(share)} der Fokustiefe, ${by === 'estimate' ? 'geschätzt' : BY_STEP[by]}. ${LOOKS[looks]}`,
  fault: benchFault,
};
