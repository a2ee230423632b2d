// French: the start and the next lens.
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { StartWords } from '../startWords.ts';
import { write } from './write.ts';

const HOW = { measured: 'mesurée', entered: 'saisie' } as const;

export const words: StartWords = {
  found: {
    label: 'Dans le carnet',
    none: 'aucune',
    more: (count) => `${write.number(count)} de plus dans le carnet`,
  },
  startWith: (lens) => `Démarrer : ${lens}`,
  startNew: (lens) => `Nouvel objectif « ${lens} » : démarrer`,
  unfit: 'Une indication ne convient pas encore. Modifiez-la, ou appuyez sur Échap dans son champ.',
  noName: 'Aucun nom n’est nécessaire. Complétez le reste quand vous voulez.',
  last: {
    label: 'Dernier objectif',
    picked: 'Du carnet',
    notMeasured: 'pas encore mesuré',
    noValue: (at) => `aucune valeur trouvée, ${write.day(at)}`,
    value: (value, how, at) => line([`dernière valeur ${writeSteps(value)}, ${HOW[how]} le ${write.day(at)}`, 'le balayage commence à proximité']),
  },
  nextLens: 'Objectif suivant',
  bench: 'Monter le banc',
  byHand: 'Noter plutôt une valeur à la main',
  photographs: 'Contrôle par photos',
  practice: { open: 'Simulateur', note: 'Pour découvrir d’abord le témoin et les mots sur cet écran.' },
  unnamed: {
    label: 'Le nommer',
    waits: (lens, value) => `${lens} (${value === null ? 'sans valeur' : writeSteps(value)}) n’a pas encore de nom.`,
    others: (count) => write.count(count, { one: 'Un autre attend son nom.', other: '# autres attendent leur nom.' }),
  },
  unfinished: {
    here: 'Un balayage est inachevé',
    elsewhere: 'Un balayage est en cours dans une autre fenêtre',
    about: (lens, details) => `${lens}, ${details}.`,
    sofar: (holds) => `${write.count(holds, { one: '# essai', other: '# essais' })} jusqu’ici. Rien n’est perdu.`,
    goOn: 'Le reprendre',
    follow: 'Le suivre',
    end: 'Le terminer en l’état',
  },
  next: {
    title: 'Objectif suivant',
    field: 'Nom de l’objectif suivant',
    placeholder: 'Nom de l’objectif',
    hint: 'Avec sa focale, par exemple « Corvid 85 ». Entrée démarre.',
    planned: 'Suivant au programme',
    plan: 'Voir le programme',
  },
};
