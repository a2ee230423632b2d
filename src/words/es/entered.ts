// Spanish: saying that a value stands in the camera now.
import { writeSteps } from '../../sweep/scale.ts';
import type { EnteredWords } from '../enteredWords.ts';
import { within } from './subject.ts';

export const words: EnteredWords = {
  title: 'Introducido en la cámara',
  value: 'Valor en la cámara',
  offTheScale: (scale) => `Indique una corrección ${within(scale)}.`,
  mark: 'Anotarlo',
  marked: (value) => `Anotado: ${writeSteps(value)} está en la cámara.`,
};
