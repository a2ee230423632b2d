// English: the answer to a look-up. "Orrin 85 f/1.8 on Velde M1, 85 mm at 4.25 m: plus 6, entered on 3 Mar 2026."
import type { Shelved } from '../../logbook/shelf.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import { line } from '../line.ts';
import type { LookUpWords } from '../lookUpWords.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

/** As it is said: a voice passes over a sign. */
const said = (value: number): string => (value === 0 ? 'zero' : value > 0 ? `plus ${write.number(value)}` : `minus ${write.number(-value)}`);

function best({ subject, value, at, state, measured }: Shelved): string {
  const about = `${pair(subject)}, ${place(subject)}`;
  if (state === 'never measured') return `${about}: never measured.`;
  if (value === null || at === null) return `${about}: measured, but no value was found.`;
  const day = write.day(at);
  switch (state) {
    case 'measured':
      return `${about}: ${said(value)}, measured on ${day}, not entered yet.`;
    case 'entered':
      return `${about}: ${said(value)}, entered on ${day}.`;
    case 'differ':
      return `${about}: ${said(value)}, entered on ${day}, but ${said(measured?.chosen ?? value)} was measured.`;
  }
}

const nothing = 'Nothing in the logbook fits.';

/** What is said of the first: its value, and whether the pair belongs in a workshop. */
const first = (one: Shelved): readonly string[] => (one.measured?.service ? [best(one), 'The pair needs service.'] : [best(one)]);

const inLine = ({ subject: { lens, body, focalLength, distance }, value }: Shelved): string =>
  `${value === null ? 'no value' : writeSteps(value)}  ${line([lens, body, write.millimetres(focalLength), write.distance(millimetres(distance))])}`;

export const words: LookUpWords = {
  answer: ([one, ...more]) =>
    one === undefined
      ? nothing
      : [
          ...first(one),
          ...(more.length === 0 ? [] : [write.count(more.length, { one: '# more situation is on screen.', other: '# more situations are on screen.' })]),
        ].join(' '),
  listed: ([one, ...more]) =>
    one === undefined ? nothing : [...first(one), ...(more.length === 0 ? [] : [`Also: ${more.map(inLine).join('; ')}.`])].join(' '),
  line: inLine,
  tryFewer: 'Nothing in the logbook fits. Try fewer letters.',
  unread: 'The logbook cannot be read just now. Open the panel.',
};
