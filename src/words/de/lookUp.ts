// German: the answer to a look-up. "Orrin 85 f/1,8 an Velde M1, 85 mm auf 4,25 m: plus 6, eingestellt am 3. März 2026."
import type { Shelved } from '../../logbook/shelf.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import { line } from '../line.ts';
import type { LookUpWords } from '../lookUpWords.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

/** As it is said: a voice passes over a sign. */
const said = (value: number): string => (value === 0 ? 'null' : value > 0 ? `plus ${write.number(value)}` : `minus ${write.number(-value)}`);

function best({ subject, value, at, state, measured }: Shelved): string {
  const about = `${pair(subject)}, ${place(subject)}`;
  if (state === 'never measured') return `${about}: nie gemessen.`;
  if (value === null || at === null) return `${about}: gemessen, aber kein Wert gefunden.`;
  const day = write.day(at);
  switch (state) {
    case 'measured':
      return `${about}: ${said(value)}, gemessen am ${day}, noch nicht eingestellt.`;
    case 'entered':
      return `${about}: ${said(value)}, eingestellt am ${day}.`;
    case 'differ':
      return `${about}: ${said(value)}, eingestellt am ${day}, aber ${said(measured?.chosen ?? value)} gemessen.`;
  }
}

const nothing = 'Im Logbuch passt nichts.';

/** What is said of the first: its value, and whether the pair belongs in a workshop. */
const first = (one: Shelved): readonly string[] => (one.measured?.service ? [best(one), 'Die Kombination muss in die Werkstatt.'] : [best(one)]);

const inLine = ({ subject: { lens, body, focalLength, distance }, value }: Shelved): string =>
  `${value === null ? 'kein Wert' : writeSteps(value)}  ${line([lens, body, write.millimetres(focalLength), write.distance(millimetres(distance))])}`;

export const words: LookUpWords = {
  answer: ([one, ...more]) =>
    one === undefined
      ? nothing
      : [
          ...first(one),
          ...(more.length === 0
            ? []
            : [write.count(more.length, { one: 'Eine weitere Situation auf dem Bildschirm.', other: '# weitere Situationen auf dem Bildschirm.' })]),
        ].join(' '),
  listed: ([one, ...more]) =>
    one === undefined ? nothing : [...first(one), ...(more.length === 0 ? [] : [`Außerdem: ${more.map(inLine).join('; ')}.`])].join(' '),
  line: inLine,
  tryFewer: 'Im Logbuch passt nichts. Versuchen Sie weniger Buchstaben.',
  unread: 'Das Logbuch ist gerade nicht lesbar. Öffnen Sie die Seitenleiste.',
};
