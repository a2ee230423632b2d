// French: whose sweep it is.
import { writeSteps } from '../../sweep/scale.ts';
import { byUnit } from '../countryInUse.ts';
import { line } from '../line.ts';
import type { Part, ToldWords } from '../toldWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const PARTS: Readonly<Record<Part, string>> = { body: 'Boîtier', lens: 'Objectif', length: 'Focale', distance: 'Distance', scale: 'Plage', more: 'Plus' };

export const words: ToldWords = {
  line: 'Objet du balayage',
  parts: PARTS,
  open: (part) => `${PARTS[part]} : à indiquer`,
  is: (part, value) => `${PARTS[part]} : ${value}`,
  chip: {
    lens: (lens, converter) => (converter === null ? lens : `${lens} + ${converter}`),
    length: write.millimetres,
    distance: (length) => write.distance(length),
    scale: ({ min, max, step }) => (step === 1 ? `${writeSteps(min)}…${writeSteps(max)}` : `${writeSteps(min)}…${writeSteps(max)} par ${write.number(step)}`),
    all: line,
  },
  done: 'Terminé',
  fewer: 'Fermer',
  body: { choose: 'Boîtier', another: 'Autre boîtier…', name: 'Nom du boîtier', hint: 'Le nom que vous lui donnez.' },
  lens: { choose: 'Objectif', another: 'Autre objectif…', name: 'Nom de l’objectif', hint: 'Avec sa focale, par exemple « Corvid 85 ».' },
  length: {
    field: 'Focale, mm',
    hint: 'Telle que gravée sur l’objectif.',
    converted: 'Telle que gravée sur l’objectif, sans le multiplicateur.',
    ends: 'Quelle extrémité du zoom ?',
  },
  distance: {
    get field() {
      return byUnit({ m: 'Distance de la mire,\u00a0m', ft: 'Distance de la mire,\u00a0pi' });
    },
    hint: 'Choisissez la distance à laquelle vous photographiez. Si le champ reste vide, c’est 50 fois la focale, selon l’usage.',
  },
  scale: { legend: 'Plage de corrections', from: 'de', to: 'à', step: 'pas' },
  arrows: {
    label: 'Flèches à côté du témoin',
    is: { absent: 'Sans flèches', 'right-is-up': 'Flèche droite : monter, vers +', 'right-is-down': 'Flèche droite : descendre, vers \u2212' },
  },
  converter: { label: 'Multiplicateur', none: 'Aucun' },
  subject: (subject) => ({ lens: subject.lens, details: line([place(subject), subject.body]) }),
  unnamed: ({ lens, body, focalLength }) => ({
    lens: lens?.name ?? 'Pas encore nommé',
    details: line([focalLength !== null && write.millimetres(focalLength), body?.name ?? null]) || 'Nommez-le avant de quitter son résultat',
  }),
  whose: {
    title: 'De quel objectif ?',
    body: 'Boîtier',
    lens: 'Objectif, avec sa focale',
    length: 'Focale, mm',
    hint: 'Par exemple « Corvid 85 f/1,8 ».',
    ends: 'Quelle extrémité du zoom était-ce ?',
    keep: 'Le garder sous ce nom',
    later: 'Il est gardé même sans nom. Vous pourrez le nommer plus tard.',
    missing: {
      body: 'Nommez aussi le boîtier.',
      lens: 'Nommez l’objectif.',
      length: 'Indiquez la focale, ou mettez-la dans le nom de l’objectif.',
    },
  },
};
