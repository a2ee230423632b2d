// English: one situation of the logbook.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { SituationWords } from '../situationWords.ts';
import { shown } from './proved.ts';
import { write } from './write.ts';

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: 'found in a sweep',
  'by hand': 'put in by hand',
  'from a table': 'from a table',
  'from another computer': 'from another computer',
};

const HOLDS = { one: '# hold', other: '# holds' };
const STEPS = { one: '# step', other: '# steps' };

/** A length on the range of corrections, to a tenth. */
const stepsOf = (value: number): string => (Math.round(value * 10) === 10 ? write.count(1, STEPS) : `${write.number(value, 1)} steps`);

export const words: SituationWords = {
  gone: 'This situation is no longer in the logbook.',
  lastValue: 'Last value',
  value: 'Value to use',
  dueAgain: 'Due again',
  toEnter: 'What to enter for this lens',
  photographs: 'Check it with photographs',
  recheck: 'Quick re-check',
  anew: 'Measure it again',
  measure: 'Measure it',
  retire: 'Retire this situation',
  bringBack: 'Bring this situation back',
  history: {
    title: 'History',
    none: 'Nothing was measured, entered or photographed here yet.',
    chart: 'Dots: measured, with their 95% intervals. Squares: entered in the camera.',
    entered: ({ at }) => `entered in the camera, ${write.day(at)}`,
    measured: ({ by, at }) => `${CAME[by]}, ${write.day(at)}`,
    noValue: {
      band: 'no value',
      value: 'no value',
      'carried over': 'outside the range',
      'past the limit': 'past the limit',
      'beyond the scale': 'outside the range',
      nothing: 'no band',
    },
    facts: ({ found, service, low, high, interval, within, holds, other }) =>
      line([
        found === 'carried over' && 'found by its width',
        service && 'needs service',
        other !== null && `or ${writeSteps(other)}`,
        low !== null && high !== null && `band ${writeSteps(low)} to ${writeSteps(high)}`,
        interval && `centre between ${write.signed(interval.from, 1)} and ${write.signed(interval.to, 1)}, 95% sure`,
        within !== null && `${write.chance(within)} sure within one step`,
        holds !== null && write.count(holds, HOLDS),
      ]),
    seeHolds: 'See every hold, or add a note',
    photographed: {
      ...shown,
      more: 'See its crops, or erase it',
      crops: (both) => (both ? 'At 100%: live view, then autofocus' : 'At 100%'),
      noCrops: 'There are no crops of it in this browser.',
      crop: { reference: 'Focused in live view', shot: 'Focused with autofocus' },
      eraseCrops: 'Erase the crops',
      erase: 'Erase it from the history',
    },
  },
  repeated: {
    title: (count) => `${write.number(count)} sweeps together`,
    centre: ({ value, from, to }) => `Centre ${write.signed(value, 1)}, between ${write.signed(from, 1)} and ${write.signed(to, 1)}, 95% sure.`,
    last: ({ apart, allowed, differ }) => [
      `The last two are ${stepsOf(apart)} apart. Chance explains up to ${stepsOf(allowed)}.`,
      differ ? 'They differ by more than that.' : 'They agree.',
    ],
    figures: 'Figures',
    scatter: ({ q, freedom, i2, tau2 }) => [
      `Scatter Q ${write.number(q, 1)} for ${write.number(freedom)}.`,
      `${write.percent(i2)} of it is more than chance.`,
      `Between sweeps: ${stepsOf(Math.sqrt(tau2))}.`,
    ],
  },
  byHand: {
    open: 'Put a value in by hand',
    form: 'By hand',
    known: 'What is known',
    is: { band: 'Both ends of the band', value: 'Only the value the camera has now' },
    one: 'One end',
    other: 'Other end',
    centre: (centre) => `The centre is ${write.signed(centre, 1)}.`,
    which: 'Two values are as near the centre. Which one did you take?',
    value: 'Value now',
    save: 'Save the value',
    saved: 'Saved in the logbook.',
    choice: writeSteps,
  },
};
