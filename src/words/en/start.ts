// English: the start and the next lens.
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { StartWords } from '../startWords.ts';
import { write } from './write.ts';

export const words: StartWords = {
  found: {
    label: 'In the logbook',
    none: 'none',
    more: (count) => `${write.number(count)} more in the logbook`,
  },
  startWith: (lens) => `Start: ${lens}`,
  startNew: (lens) => `New lens “${lens}”: Start`,
  unfit: 'Something you entered does not fit yet. Change it, or press Escape in its field.',
  noName: 'No name is needed. Add the rest whenever you like.',
  last: {
    label: 'Last lens',
    picked: 'Looked up',
    notMeasured: 'not measured yet',
    noValue: (at) => `no value found, ${write.day(at)}`,
    value: (value, how, at) => line([`last ${writeSteps(value)}, ${how} on ${write.day(at)}`, 'a sweep begins near it']),
  },
  nextLens: 'Next lens',
  bench: 'Set up the bench',
  byHand: 'Put a value in by hand instead',
  photographs: 'Check with photographs',
  practice: { open: 'Practice camera', note: 'Learn the light and the words on this screen first.' },
  unnamed: {
    label: 'Name it',
    waits: (lens, value) => `${lens} (${value === null ? 'no value' : writeSteps(value)}) has no name yet.`,
    others: (count) => write.count(count, { one: 'One more waits for its name.', other: '# more wait for their names.' }),
  },
  unfinished: {
    here: 'A sweep is unfinished',
    elsewhere: 'A sweep runs in another window',
    about: (lens, details) => `${lens}, ${details}.`,
    sofar: (holds) => `${write.count(holds, { one: '# hold', other: '# holds' })} so far. Nothing is lost.`,
    goOn: 'Go on with it',
    follow: 'Follow it',
    end: 'End it as it stands',
  },
  next: {
    title: 'Next lens',
    field: 'Name of the next lens',
    placeholder: 'Name of the lens',
    hint: 'With its focal length, such as “Corvid 85”. Enter starts.',
    planned: 'Next in the plan',
    plan: 'See the plan',
  },
};
