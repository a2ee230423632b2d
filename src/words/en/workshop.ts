// English: the page for a workshop.
import { writeSteps } from '../../sweep/scale.ts';
import type { WorkshopWords } from '../workshopWords.ts';
import { shown } from './proved.ts';
import { pair } from './subject.ts';
import { write } from './write.ts';

const HOLDS = { one: '# hold', other: '# holds' };

export const words: WorkshopWords = {
  title: 'For the workshop',
  gone: 'This sweep is not in the logbook. Close this page and open it again from the result.',
  practice: 'Measured on the practice camera, not on a real body or lens.',
  pair,
  how: {
    title: 'How it was measured',
    focused: (holdTime) =>
      'The lens was focused in live view, enlarged, at full aperture, on a target square to the camera, and left there. Corrections were dialled in one ' +
      `after another, and the focus light was watched for ${write.count(holdTime, { one: '# second', other: '# seconds' })} of half-press each time.`,
    counts: 'A value counts as in where the light came on at once and stayed on. The values that are in form one band. The correction is its middle.',
    aside:
      'The band runs past the range of corrections, so its width was measured once more with the focus turned slightly aside. The centre in sharp focus is half ' +
      'that width from the end seen there. The interval allows for the wavering of the light at the ends.',
    decides: 'The holds are what the owner saw in the viewfinder. The workshop’s own measurement decides.',
  },
  holds: {
    title: 'Every hold, in order',
    inFocus: (count) => `In sharp focus, ${write.count(count, HOLDS)}`,
    aside: (count) => `With the focus set aside, ${write.count(count, HOLDS)}`,
  },
  photographs: { title: 'What photographs showed', ...shown },
  bench: 'The bench',
  facts: {
    body: 'Body',
    lens: 'Lens',
    focalLength: 'Focal length',
    distance: 'Distance',
    range: 'Corrections',
    measured: 'Measured',
  },
  named: (name, serial) => (serial === null ? name : `${name}, ${serial}`),
  length: write.millimetres,
  distance: (length) => write.distance(length),
  range: ({ min, max, step }) =>
    step === 1 ? `${writeSteps(min)} to ${writeSteps(max)}` : `${writeSteps(min)} to ${writeSteps(max)} in steps of ${write.number(step)}`,
  day: write.day,
  sense: 'A higher correction moves the focus away from the camera.',
  table: { hold: 'Hold', value: 'Value', light: 'Light', arrows: 'Arrows', counts: 'Counts' },
  number: (hold) => write.number(hold),
  light: { steady: 'steady', late: 'late', flicker: 'flickering', dark: 'dark', untold: 'failed' },
  arrows: { none: '', left: 'left', right: 'right', balanced: 'both, even', lopsided: 'uneven' },
  counts: { in: 'in', out: 'out' },
};
