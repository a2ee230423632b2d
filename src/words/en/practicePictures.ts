// English: pictures that the practice camera takes.
import type { PracticePicturesWords } from '../practicePicturesWords.ts';
import { write } from './write.ts';

const STANDS = 'It stands two metres in front of target and ramp, with 85\u00a0mm at f/1.8.';

export const words: PracticePicturesWords = {
  title: 'Practice pictures',
  simulated: 'Simulated: the practice camera draws these pictures. They say nothing about your own camera, and nothing of them is kept.',
  about: {
    one: `The practice camera takes one picture with autofocus at this value. ${STANDS}`,
    check: `The practice camera takes one picture in live view, then six with autofocus at this value. ${STANDS}`,
    bracket: `The practice camera takes one picture in live view, then one at each value of the bracket. ${STANDS}`,
  },
  take: { one: 'Take a picture', check: 'Take the pictures', bracket: 'Take the pictures' },
  picture: (number) => `Practice picture ${write.number(number)}`,
  another: 'Another practice camera',
  truth: {
    title: 'What this practice camera really is',
    told: (centre, step) => `Its true centre is ${write.signed(centre, 1)}. One step moves focus by ${write.unit(step, 'millimeter', 1)} at the target.`,
  },
};
