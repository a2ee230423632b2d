// French: the plan of a job.
import type { Change } from '../../logbook/plan/changes.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { seconds, type Seconds } from '../../units.ts';
import { byUnit } from '../countryInUse.ts';
import { line } from '../line.ts';
import type { PlanWords } from '../planWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const CHANGES: readonly (readonly [keyof Change, string])[] = [
  ['tripod', 'déplacez le trépied'],
  ['body', 'changez le boîtier'],
  ['lens', 'changez l’objectif'],
  ['converter', 'changez le multiplicateur'],
  ['zoom', 'tournez le zoom'],
];

/** In whole minutes, one at least. */
function minutes(time: Seconds): string {
  const whole = Math.max(1, Math.round(time / 60));
  return whole < 60 ? write.unit(whole, 'minute') : write.duration(seconds(whole * 60));
}

export const words: PlanWords = {
  title: 'Programme',
  replaces: 'Un nouveau programme remplace l’ancien. Ce qui a été mesuré reste dans le carnet.',
  form: {
    bodies: 'Boîtiers',
    lenses: 'Objectifs',
    converters: 'Aussi avec',
    zooms: 'Zooms',
    ends: { both: 'Les deux extrémités', wide: 'Grand-angle seul', tele: 'Télé seul' },
    distances: {
      get label() {
        return byUnit({ m: 'Distances, m', ft: 'Distances, pi' });
      },
      get hint() {
        return byUnit({
          m: 'Par exemple 2,5 8. Laissez vide pour 50 fois chaque focale.',
          ft: 'Par exemple 8 25. Laissez vide pour 50 fois chaque focale.',
        });
      },
      get fault() {
        return byUnit({
          m: 'Indiquez les distances en mètres, de 0,05 à 500, séparées par un espace.',
          ft: 'Indiquez les distances en pieds, de 0,17 à 1640, séparées par un espace.',
        });
      },
    },
    make: 'Établir le programme',
    fault: (fault) => {
      switch (fault.is) {
        case 'no body':
          return 'Choisissez au moins un boîtier.';
        case 'no lens':
          return 'Choisissez au moins un objectif.';
        case 'no focal length':
          return `Indiquez d’abord la focale de cet objectif dans le matériel, puis choisissez-le de nouveau : ${fault.lens}.`;
      }
    },
    unfit: 'Cela ne convient pas. Vérifiez vos choix.',
  },
  measured: 'Mesuré',
  next: 'Mesurer le suivant',
  underWay: 'Un balayage est en cours. Terminez-le d’abord depuis l’accueil.',
  anew: 'Nouveau programme',
  pace: ({ perSweep, sweeps }) =>
    sweeps === 0
      ? `La durée est une estimation, ${minutes(perSweep)} par balayage, jusqu’à ce que vous en ayez terminé un.`
      : `La durée suit votre propre rythme, ${minutes(perSweep)} par balayage.`,
  progress: ({ done, all, left, next }) =>
    next === null
      ? [`${write.number(done)} sur ${write.count(all, { one: '# mesuré', other: '# mesurés' })}.`, 'Le programme est terminé.']
      : [
          `${write.number(done)} sur ${write.count(all, { one: '# mesuré', other: '# mesurés' })}, encore ${minutes(left)} environ.`,
          `Suivant : ${next.lens}, ${place(next)}, ${next.body}.`,
        ],
  stations: 'Configurations',
  details: (subject) => line([place(subject), subject.body]),
  is: { next: 'suivant', 'to do': 'à faire' },
  done: (value) => (value === null ? 'fait : pas de valeur' : `fait : ${writeSteps(value)}`),
  before: (change) => {
    const wanted = CHANGES.filter(([part]) => change[part]).map(([, what]) => what);
    return wanted.length === 0 ? '' : `D’abord, ${write.list(wanted)}.`;
  },
  toEnter: 'Que saisir',
  toEnterFor: (subject) => `Que saisir pour ${subject.lens}, ${place(subject)}, ${subject.body}`,
};
