// English: each step of the set-up walk as it is spoken, in one short sentence.
import { FROM } from './lengths.ts';
import type { Each } from '../setUpWords.ts';
import { write } from './write.ts';

/** A correction as it is said. */
const spoken = (value: number): string => (value === 0 ? 'zero' : `${value > 0 ? 'plus' : 'minus'} ${write.number(Math.abs(value))}`);

export const SPOKEN: Each = {
  practice: () => 'Practice has no camera to set up, so watch the lamp on the screen.',
  'old value': () => 'Note the correction stored now.',
  tripod: () => 'Camera on a firm tripod, release by remote.',
  converter: ({ factor }) => `Fit the ${write.number(factor, 2)} times converter.`,
  zoom: ({ focalLength }) => `Zoom to ${write.number(focalLength)} millimetres.`,
  target: () => 'Hang the target flat, its centre at lens height.',
  print: () => 'Measure the printed scale.',
  distance: ({ distance: length, from, unit }) => `Target at ${write.distance(length, unit)} from ${FROM[from]}.`,
  light: () => 'Light the target evenly, and read the exposure.',
  square: ({ by }) =>
    ({
      mirror: 'Square the target with the mirror.',
      sides: 'Square the target by its four sides.',
      spot: 'Square the target with the returning spot.',
    })[by],
  stabiliser: () => 'Stabiliser off.',
  'centre point': () => 'Centre point, single-shot autofocus.',
  aperture: ({ aperture }) => `Widest aperture, f ${write.number(aperture, 1)}.`,
  'focus button': () => 'Use your focus button for the holds.',
  temperature: () => 'Let the kit reach room temperature.',
  'start value': ({ start }) => `Correction on for this lens, set to ${spoken(start)}.`,
  'critical focus': ({ by }) => (by === 'live view' ? 'Focus in live view at full magnification.' : 'Find the sharpest focus on photographs.'),
  magnification: () => 'Photograph the scale and count its pixels.',
  'hold focus': ({ at }) => (at === 'body' ? 'Manual focus at the body, and hands off the ring.' : 'Manual focus at the lens, and hands off the ring.'),
  viewfinder: ({ leaves }) => (leaves === 'live view' ? 'Leave live view, eye to the viewfinder.' : 'Eye to the viewfinder.'),
};
