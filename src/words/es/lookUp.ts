// Spanish: the answer to a look-up. "Orrin 85 f/1.8 en Velde M1, 85 mm a 4,25 m: más 6, introducido el 3 mar 2026."
import type { Shelved } from '../../logbook/shelf.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import { line } from '../line.ts';
import type { LookUpWords } from '../lookUpWords.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

/** As it is said: a voice passes over a sign. */
const said = (value: number): string => (value === 0 ? 'cero' : value > 0 ? `más ${write.number(value)}` : `menos ${write.number(-value)}`);

function best({ subject, value, at, state, measured }: Shelved): string {
  const about = `${pair(subject)}, ${place(subject)}`;
  if (state === 'never measured') return `${about}: sin medir.`;
  if (value === null || at === null) return `${about}: medido, pero no se halló ningún valor.`;
  const day = write.day(at);
  switch (state) {
    case 'measured':
      return `${about}: ${said(value)}, medido el ${day}, aún sin introducir.`;
    case 'entered':
      return `${about}: ${said(value)}, introducido el ${day}.`;
    case 'differ':
      return `${about}: ${said(value)}, introducido el ${day}, pero se midió ${said(measured?.chosen ?? value)}.`;
  }
}

const nothing = 'Nada del cuaderno coincide.';

/** What is said of the first: its value, and whether the pair belongs in a workshop. */
const first = (one: Shelved): readonly string[] => (one.measured?.service ? [best(one), 'El conjunto necesita servicio técnico.'] : [best(one)]);

const inLine = ({ subject: { lens, body, focalLength, distance }, value }: Shelved): string =>
  `${value === null ? 'sin valor' : writeSteps(value)}  ${line([lens, body, write.millimetres(focalLength), write.distance(millimetres(distance))])}`;

export const words: LookUpWords = {
  answer: ([one, ...more]) =>
    one === undefined
      ? nothing
      : [
          ...first(one),
          ...(more.length === 0
            ? []
            : [write.count(more.length, { one: 'Hay # situación más en la pantalla.', other: 'Hay # situaciones más en la pantalla.' })]),
        ].join(' '),
  listed: ([one, ...more]) =>
    one === undefined ? nothing : [...first(one), ...(more.length === 0 ? [] : [`También: ${more.map(inLine).join('; ')}.`])].join(' '),
  line: inLine,
  tryFewer: 'Nada del cuaderno coincide. Pruebe con menos letras.',
  unread: 'Ahora no se puede leer el cuaderno. Abra el panel.',
};
