// French: the page for a workshop.
import { writeSteps } from '../../sweep/scale.ts';
import type { WorkshopWords } from '../workshopWords.ts';
import { shown } from './proved.ts';
import { pair } from './subject.ts';
import { write } from './write.ts';

const HOLDS = { one: '# essai', other: '# essais' };

export const words: WorkshopWords = {
  title: 'Pour l’atelier',
  gone: 'Ce balayage n’est pas dans le carnet. Fermez cette page et rouvrez-la depuis le résultat.',
  practice: 'Mesuré sur le simulateur, non sur un vrai boîtier ou objectif.',
  pair,
  how: {
    title: 'Comment cela a été mesuré',
    focused: (holdTime) =>
      'Le point a été fait en visée écran, image agrandie, à pleine ouverture, sur une mire parallèle au capteur, puis laissé tel quel. Les corrections ont été réglées ' +
      `l’une après l’autre et, chaque fois, le témoin de mise au point a été observé pendant ${write.count(holdTime, { one: '# seconde', other: '# secondes' })} d’appui à mi-course.`,
    counts: 'Une valeur compte dedans si le témoin s’est allumé aussitôt et a tenu. Ces valeurs forment une seule bande. La correction en est le milieu.',
    aside:
      'La bande dépasse la plage de corrections : sa largeur a donc été mesurée une fois de plus avec la mise au point légèrement décalée. Au point net, le centre est à la moitié ' +
      'de cette largeur de l’extrémité vue. L’intervalle tient compte de l’hésitation du témoin aux extrémités.',
    decides: 'Les essais sont ce que le propriétaire a vu dans le viseur. C’est la mesure de l’atelier qui décide.',
  },
  holds: {
    title: 'Tous les essais, dans l’ordre',
    inFocus: (count) => `Au point net, ${write.count(count, HOLDS)}`,
    aside: (count) => `Avec la mise au point décalée, ${write.count(count, HOLDS)}`,
  },
  photographs: { title: 'Ce qu’ont montré les photos', ...shown },
  bench: 'Le banc',
  facts: {
    body: 'Boîtier',
    lens: 'Objectif',
    focalLength: 'Focale',
    distance: 'Distance',
    range: 'Corrections',
    measured: 'Mesuré le',
  },
  named: (name, serial) => (serial === null ? name : `${name}, ${serial}`),
  length: write.millimetres,
  distance: (length) => write.distance(length),
  range: ({ min, max, step }) =>
    step === 1 ? `${writeSteps(min)} à ${writeSteps(max)}` : `${writeSteps(min)} à ${writeSteps(max)} par pas de ${write.number(step)}`,
  day: write.day,
  sense: 'Une correction plus haute éloigne le point de l’appareil.',
  table: { hold: 'Essai', value: 'Valeur', light: 'Témoin', arrows: 'Flèches', counts: 'Compte' },
  number: (hold) => write.number(hold),
  light: { steady: 'fixe', late: 'tardif', flicker: 'clignotant', dark: 'éteint', untold: 'échec' },
  arrows: { none: '', left: 'gauche', right: 'droite', balanced: 'égales', lopsided: 'inégales' },
  counts: { in: 'dedans', out: 'dehors' },
};
