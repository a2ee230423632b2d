// English: the logbook's list.
import type { DueReason } from '../../logbook/due.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { LogbookWords } from '../logbookWords.ts';
import { focusFell } from './focusFell.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const DAYS_IN_A_MONTH = 30.44;

const RECORDS = { one: '# record', other: '# records' };

const since = (happened: string, note: string): string =>
  note === '' ? `${happened} since it was measured.` : `${happened} since it was measured: ${note.replace(/\.$/, '')}.`;

function due(reason: DueReason): string {
  switch (reason.why) {
    case 'age':
      return reason.days < 60
        ? write.count(reason.days, { one: 'Last measured # day ago.', other: 'Last measured # days ago.' })
        : write.count(Math.floor(reason.days / DAYS_IN_A_MONTH), { one: 'Last measured # month ago.', other: 'Last measured # months ago.' });
    case 'firmware':
      return since('New firmware', reason.note);
    case 'service':
      return since('Serviced', reason.note);
    case 'temperature':
      return `Measured at ${write.unit(reason.before, 'celsius')}, and it is ${write.unit(reason.now, 'celsius')} now.`;
    case 're-check':
      return `In the last re-check, the light was not steady at ${writeSteps(reason.value)}, the value entered.`;
    case 'drift':
      return `The last two measurements are ${write.count(reason.apart, { one: '# step apart', other: '# steps apart' }, 1)}.`;
    case 'photographs':
      return `Photographs showed a shift: at ${writeSteps(reason.value)}, focus fell ${focusFell(reason.bias)}.`;
  }
}

export const words: LogbookWords = {
  title: 'Logbook',
  find: { label: 'Find a body, lens, focal length or distance', short: 'Find a lens', found: 'Found', aloud: 'Read aloud' },
  found: (count) => `${write.number(count)} found`,
  files: 'Backup and tables',
  practised: (count) => `Practice sweeps (${write.number(count)})`,
  filter: {
    open: (on) => (on ? 'Filter: on' : 'Filter'),
    body: 'Body',
    everyBody: 'Every body',
    show: 'Show',
    is: {
      all: 'All in use',
      'due again': 'Due again',
      'never measured': 'Never measured',
      'not entered': 'Measured, not entered',
      retired: 'Retired',
    },
    temperature: { label: 'Temperature now, °C', hint: 'Values measured at a very different temperature are then due again.' },
  },
  nothing: {
    of: {
      all: 'Nothing in the logbook is in use.',
      'due again': 'Nothing is due again.',
      'never measured': 'Everything has been measured.',
      'not entered': 'Everything measured has been entered.',
      retired: 'Nothing is retired.',
    },
    like: (typed) => `Nothing in the logbook fits “${typed}”. Try fewer letters.`,
  },
  backUp: (reminder) =>
    reminder.is === 'none yet'
      ? `There is no backup of ${write.count(reminder.unsaved, RECORDS)} yet. Write one now.`
      : `The newest backup is ${write.number(reminder.days)} days old and lacks ${write.count(reminder.unsaved, RECORDS)}. Write a new one now.`,
  noValue: 'none',
  more: (count) => `Show more of ${write.number(count)}`,
  details: (subject) => line([place(subject), subject.body]),
  standing: ({ state, at, value, measured }) => {
    if (state === 'never measured' || at === null) return 'never measured';
    if (measured?.service) return `needs service, measured ${write.day(measured.at)}`;
    if (value === null) return `no value found, ${write.day(at)}`;
    switch (state) {
      case 'measured':
        return `measured ${write.day(at)}, not entered yet`;
      case 'entered':
        return `entered ${write.day(at)}`;
      case 'differ':
        return `entered ${write.day(at)}, but ${writeSteps(measured?.chosen ?? value)} was measured`;
    }
  },
  due,
  dueAgain: (reason) => `Due again: ${due(reason)}`,
  result: (outcome) => {
    switch (outcome.found) {
      case 'band':
        return writeSteps(outcome.chosen);
      case 'carried over':
        return outcome.service ? (outcome.side === 'high' ? 'above the range' : 'below the range') : writeSteps(outcome.chosen);
      case 'past the limit':
        return 'past the limit';
      case 'beyond the scale':
        return outcome.side === 'above' ? 'above the range' : 'below the range';
      case 'nothing':
        return 'no band';
    }
  },
  day: write.day,
};
