// English: one sweep of the logbook.
import type { Light } from '../../sweep/verdict.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { RecordWords } from '../recordWords.ts';
import { place } from './subject.ts';
import { ARROWS_SEEN } from './verdict.ts';
import { write } from './write.ts';

const LIGHT: Readonly<Record<Light, string>> = {
  steady: 'the light was steady',
  late: 'the light came late',
  flicker: 'the light flickered',
  dark: 'the light stayed dark',
  untold: 'the hold failed',
};

const COUNTS = { in: 'It counts as inside the band.', out: 'It counts as outside the band.' } as const;

const between = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? `at ${write.signed(from, 1)}` : `between ${write.signed(from, 1)} and ${write.signed(to, 1)}`;

export const words: RecordWords = {
  title: 'Logbook',
  gone: 'This record is no longer in the logbook.',
  details: (subject, finished) => line([place(subject), subject.body, write.day(finished)]),
  bench: 'The bench',
  conditions: {
    open: (noted) => (noted ? 'Change the light, temperature or note' : 'Note the light, temperature and more'),
    form: 'How it was',
    save: 'Save it with this sweep',
    saved: 'Saved.',
  },
  replay: {
    open: 'Replay it, hold by hold',
    title: 'Replay',
    at: (step, last) => `Replay: ${write.number(step)} of ${write.number(last)}`,
    earlier: 'Earlier',
    later: 'Later',
    play: 'Play',
    halt: 'Pause',
    sure: (interval) => `The centre is ${between(interval)}, 95% sure.`,
    narrowing: (first, last) => `How the belief narrowed: the centre was ${between(first)} before the first hold, and ${between(last)} at the end.`,
    opened: 'Before the first hold.',
    held: ({ number, value, light, arrows, counts }) => {
      const beside = ARROWS_SEEN[arrows];
      const seen = beside === null ? LIGHT[light] : `${LIGHT[light]}, ${beside}`;
      const hold = `Hold ${write.number(number)} at ${writeSteps(value)}: ${seen}.`;
      return light === 'untold' ? hold : `${hold} ${COUNTS[counts]}`;
    },
    takenBack: (left) => `Taken back. ${write.count(left, { one: '# hold is', other: '# holds are' })} left.`,
    begunAfresh: 'The focus had moved, so the sweep began afresh.',
    ended: 'The end of the sweep.',
    checking: 'The holds contradicted each other, so the sweep asked you to check the focus.',
    turning: 'The sweep asked you to turn the focus.',
    offered: 'The sweep offered to finish.',
    next: (value, why) => `Next came ${writeSteps(value)}: ${why}.`,
  },
};
