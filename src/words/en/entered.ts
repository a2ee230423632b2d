// English: saying that a value stands in the camera now.
import { writeSteps } from '../../sweep/scale.ts';
import type { EnteredWords } from '../enteredWords.ts';
import { within } from './subject.ts';

export const words: EnteredWords = {
  title: 'Entered in the camera',
  value: 'Value in the camera',
  offTheScale: (scale) => `Enter a correction ${within(scale)}.`,
  mark: 'Save as entered',
  marked: (value) => `Noted: ${writeSteps(value)} is in the camera.`,
};
