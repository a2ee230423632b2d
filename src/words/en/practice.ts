// English: the practice camera.
import type { PracticeWords } from '../practiceWords.ts';
import { write } from './write.ts';

const ARROWS = { none: [], left: ['left arrow'], right: ['right arrow'], both: ['left arrow', 'right arrow'] } as const;

export const words: PracticeWords = {
  title: 'Practice camera',
  about: 'A simulated body and lens, with their focus light on this screen. Train your eye, the words and the switch. At the end it shows its true band.',
  arrows: 'With arrows beside the light',
  past: 'With a band that runs past the range of corrections',
  odd: 'Something is wrong with it: find out what',
  begin: 'Practise',
  train: 'Train your eye',
  pictures: 'Practice pictures',
  light: (lit, arrows) => `Practice light: ${write.list([lit ? 'lit' : 'dark', ...ARROWS[arrows]])}`,
};
