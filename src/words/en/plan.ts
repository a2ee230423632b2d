// English: the plan of a job.
import type { Change } from '../../logbook/plan/changes.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { seconds, type Seconds } from '../../units.ts';
import { byUnit } from '../countryInUse.ts';
import { line } from '../line.ts';
import type { PlanWords } from '../planWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const CHANGES: readonly (readonly [keyof Change, string])[] = [
  ['tripod', 'move the tripod'],
  ['body', 'change the body'],
  ['lens', 'change the lens'],
  ['converter', 'change the converter'],
  ['zoom', 'turn the zoom'],
];

/** In whole minutes, one at least. */
function minutes(time: Seconds): string {
  const whole = Math.max(1, Math.round(time / 60));
  return whole < 60 ? write.unit(whole, 'minute') : write.duration(seconds(whole * 60));
}

export const words: PlanWords = {
  title: 'Plan',
  replaces: 'A new plan replaces the old one. What was measured stays in the logbook.',
  form: {
    bodies: 'Bodies',
    lenses: 'Lenses',
    converters: 'Also with',
    zooms: 'Zooms',
    ends: { both: 'Both ends', wide: 'Wide end only', tele: 'Tele end only' },
    distances: {
      get label() {
        return byUnit({ m: 'Distances, m', ft: 'Distances, ft' });
      },
      get hint() {
        return byUnit({ m: 'Such as 2.5 8. Leave empty for fifty focal lengths each.', ft: 'Such as 8 25. Leave empty for fifty focal lengths each.' });
      },
      get fault() {
        return byUnit({
          m: 'Enter distances in metres, from 0.05 to 500, with a space between them.',
          ft: 'Enter distances in feet, from 0.17 to 1640, with a space between them.',
        });
      },
    },
    make: 'Make the plan',
    fault: (fault) => {
      switch (fault.is) {
        case 'no body':
          return 'Choose at least one body.';
        case 'no lens':
          return 'Choose at least one lens.';
        case 'no focal length':
          return `Enter the focal length of ${fault.lens} in the kit first, then choose it again.`;
      }
    },
    unfit: 'This does not fit. Check what you chose.',
  },
  measured: 'Measured',
  next: 'Measure the next',
  underWay: 'A sweep is under way. Finish it from the start screen first.',
  anew: 'Make a new plan',
  pace: ({ perSweep, sweeps }) =>
    sweeps === 0
      ? `The time is a guess, ${minutes(perSweep)} a sweep, until you have finished one.`
      : `The time follows your own pace, ${minutes(perSweep)} a sweep.`,
  progress: ({ done, all, left, next }) =>
    next === null
      ? [`${write.number(done)} of ${write.number(all)} measured.`, 'The plan is done.']
      : [`${write.number(done)} of ${write.number(all)} measured, about ${minutes(left)} left.`, `Next: ${next.lens}, ${place(next)}, ${next.body}.`],
  stations: 'Situations',
  details: (subject) => line([place(subject), subject.body]),
  is: { next: 'next', 'to do': 'to do' },
  done: (value) => (value === null ? 'done: no value' : `done: ${writeSteps(value)}`),
  before: (change) => {
    const wanted = CHANGES.filter(([part]) => change[part]).map(([, what]) => what);
    return wanted.length === 0 ? '' : `First ${write.list(wanted)}.`;
  },
  toEnter: 'What to enter',
  toEnterFor: (subject) => `What to enter for ${subject.lens}, ${place(subject)}, ${subject.body}`,
};
