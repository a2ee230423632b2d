// German: saying that a value stands in the camera now.
import { writeSteps } from '../../sweep/scale.ts';
import type { EnteredWords } from '../enteredWords.ts';
import { within } from './subject.ts';

export const words: EnteredWords = {
  title: 'In der Kamera eingestellt',
  value: 'Wert in der Kamera',
  offTheScale: (scale) => `Geben Sie eine Korrektur an, ${within(scale)}.`,
  mark: 'Vermerken',
  marked: (value) => `Vermerkt: ${writeSteps(value)} ist in der Kamera eingestellt.`,
};
