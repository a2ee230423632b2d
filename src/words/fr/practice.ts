// French: the practice camera.
import type { PracticeWords } from '../practiceWords.ts';
import { write } from './write.ts';

const ARROWS = { none: [], left: ['flèche gauche'], right: ['flèche droite'], both: ['flèche gauche', 'flèche droite'] } as const;

export const words: PracticeWords = {
  title: 'Simulateur',
  about:
    'Un boîtier et un objectif simulés, avec leur témoin de mise au point sur cet écran. Exercez votre œil, les mots et le contacteur. À la fin, la vraie bande s’affiche.',
  arrows: 'Avec des flèches à côté du témoin',
  past: 'Avec une bande qui dépasse la plage de corrections',
  odd: 'Avec un défaut, à vous de le trouver',
  begin: 'Commencer un balayage',
  train: 'Exercer l’œil',
  pictures: 'Images simulées',
  light: (lit, arrows) => `Témoin simulé : ${write.list([lit ? 'allumé' : 'éteint', ...ARROWS[arrows]])}`,
};
