// English: one situation of the logbook.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { seconds } from '../../units.ts';
import { line } from '../line.ts';
import type { SituationWords } from '../situationWords.ts';
import { driftTold } from './monthsOfDrift.ts';
import { shown } from './proved.ts';
import { write } from './write.ts';

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: 'found in a sweep',
  'by hand': 'put in by hand',
  'from a table': 'from a table',
  'from another computer': 'from another computer',
};

const NO_VALUE: Readonly<Record<Measured['found'], string>> = {
  band: 'no value',
  value: 'no value',
  'carried over': 'outside the range',
  'past the limit': 'past the limit',
  'beyond the scale': 'outside the range',
  nothing: 'no band',
};

/** So many of the newest values stand in one line. */
const NEWEST = 6;

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
  answer: {
    sure: ({ by, chosen, within }, value) => {
      if (by !== 'sweep') return CAME[by];
      if (within === null) return '';
      const sure = `${write.chance(within)} sure within one step`;
      return chosen === null || chosen === value ? sure : `${writeSteps(chosen)}: ${sure}`;
    },
    before: (measured) => {
      const values = measured.map(({ chosen, found }) => (chosen === null ? NO_VALUE[found] : writeSteps(chosen)));
      const shown = values.length > NEWEST ? ['\u2026', ...values.slice(-NEWEST)] : values;
      const since = measured[0] ? ` since ${write.monthAndYear(measured[0].at)}` : '';
      return `Measured ${write.count(measured.length, { one: 'once', other: '# times' })}${since}: ${shown.join(', ')}`;
    },
    notDue: 'Not due again yet.',
    moreReasons: (count) => write.count(count, { one: 'One more reason', other: '# more reasons' }),
  },
  rooms: {
    evidence: 'Evidence',
    kept: ({ measured, entries, proofs }) =>
      line([
        measured.length > 0 && `${write.number(measured.length)} measured`,
        entries.length > 0 && `${write.number(entries.length)} entered`,
        proofs.length > 0 && `${write.number(proofs.length)} photographed`,
      ]) || 'nothing yet',
    entering: 'Entering',
    inCamera: (value) => (value === null ? 'nothing entered yet' : `${writeSteps(value)} is in the camera`),
    others: 'Other situations of this lens',
    situations: (count) => write.count(count, { one: '# situation', other: '# situations' }),
    figures: 'Figures',
  },
  figures: ({ low, high, centre, interval, within, holds, seconds: taken }) => [
    ...(low !== null && high !== null ? [{ what: 'Band', is: `${writeSteps(low)} to ${writeSteps(high)}` }] : []),
    ...(centre !== null ? [{ what: 'Centre', is: write.signed(centre, 1) }] : []),
    ...(interval ? [{ what: 'Centre, 95% sure', is: `${write.signed(interval.from, 1)} to ${write.signed(interval.to, 1)}` }] : []),
    ...(within !== null ? [{ what: 'Within one step', is: `${write.chance(within)} sure` }] : []),
    ...(holds !== null ? [{ what: 'Holds', is: write.number(holds) }] : []),
    ...(taken !== null ? [{ what: 'Time', is: write.duration(seconds(taken)) }] : []),
  ],
  retire: 'Retire this situation',
  bringBack: 'Bring this situation back',
  history: {
    title: 'History',
    none: 'Nothing was measured, entered or photographed here yet.',
    chart: 'Dots: measured, with their 95% intervals. Squares: entered in the camera.',
    chartWithDrift: 'Dots: measured, with their 95% intervals. Shaded: where the drift may lie, 95% sure. Squares: entered in the camera.',
    drifted: driftTold,
    entered: ({ at }) => `entered in the camera, ${write.day(at)}`,
    measured: ({ by, at }) => `${CAME[by]}, ${write.day(at)}`,
    noValue: NO_VALUE,
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
    differ: 'the sweeps differ',
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
