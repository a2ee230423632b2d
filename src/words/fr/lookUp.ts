// French: the answer to a look-up. "Orrin 85 f/1,8 sur Velde M1, 85 mm à 4,25 m : plus 6, saisi le 3 mars 2026."
import type { Shelved } from '../../logbook/shelf.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import { line } from '../line.ts';
import type { LookUpWords } from '../lookUpWords.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

/** As it is said: a voice passes over a sign. */
const said = (value: number): string => (value === 0 ? 'zéro' : value > 0 ? `plus ${write.number(value)}` : `moins ${write.number(-value)}`);

function best({ subject, value, at, state, measured }: Shelved): string {
  const about = `${pair(subject)}, ${place(subject)}`;
  if (state === 'never measured') return `${about} : jamais mesuré.`;
  if (value === null || at === null) return `${about} : mesuré, mais aucune valeur trouvée.`;
  const day = write.day(at);
  switch (state) {
    case 'measured':
      return `${about} : ${said(value)}, mesuré le ${day}, pas encore saisi.`;
    case 'entered':
      return `${about} : ${said(value)}, saisi le ${day}.`;
    case 'differ':
      return `${about} : ${said(value)}, saisi le ${day}, mais ${said(measured?.chosen ?? value)} a été mesuré.`;
  }
}

const nothing = 'Rien dans le carnet ne correspond.';

/** What is said of the first: its value, and whether the pair belongs in a workshop. */
const first = (one: Shelved): readonly string[] => (one.measured?.service ? [best(one), 'Le couple doit passer en atelier.'] : [best(one)]);

const inLine = ({ subject: { lens, body, focalLength, distance }, value }: Shelved): string =>
  `${value === null ? 'sans valeur' : writeSteps(value)}  ${line([lens, body, write.millimetres(focalLength), write.distance(millimetres(distance))])}`;

export const words: LookUpWords = {
  answer: ([one, ...more]) =>
    one === undefined
      ? nothing
      : [
          ...first(one),
          ...(more.length === 0 ? [] : [write.count(more.length, { one: '# autre configuration à l’écran.', other: '# autres configurations à l’écran.' })]),
        ].join(' '),
  listed: ([one, ...more]) =>
    one === undefined ? nothing : [...first(one), ...(more.length === 0 ? [] : [`Aussi : ${more.map(inLine).join(' ; ')}.`])].join(' '),
  line: inLine,
  tryFewer: 'Rien dans le carnet ne correspond. Essayez avec moins de lettres.',
  unread: 'Le carnet ne peut pas être lu pour l’instant. Ouvrez le panneau.',
};
