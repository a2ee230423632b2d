// French: saying that a value stands in the camera now.
import { writeSteps } from '../../sweep/scale.ts';
import type { EnteredWords } from '../enteredWords.ts';
import { within } from './subject.ts';

export const words: EnteredWords = {
  title: 'Saisie dans l’appareil',
  value: 'Valeur dans l’appareil',
  offTheScale: (scale) => `Indiquez une correction ${within(scale)}.`,
  mark: 'Marquer cette valeur',
  marked: (value) => `${writeSteps(value)} est marqué comme saisi.`,
};
