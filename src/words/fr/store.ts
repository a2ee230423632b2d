// French: what went wrong with what lies on this computer. What the browser says stands in brackets, in its own words.
import type { StoreWords } from '../storeWords.ts';

export const words: StoreWords = {
  fault: ({ is, why }) =>
    is === 'not read'
      ? `Les données ne peuvent pas être lues (${why ?? 'pas de réponse'}). Fermez ce panneau et rouvrez-le.`
      : `Rien ne peut être enregistré pour l’instant (${why ?? 'pas de réponse'}). Laissez ce panneau ouvert et libérez de la place sur le disque. ` +
        'Tout est gardé ici et sera enregistré dès que possible.',
  tryNow: 'Réessayer',
  taught: {
    'not read': 'Les mots appris ne peuvent pas être lus. Refaites leur apprentis\u00adsage dans le test d’écoute. Le reste est intact.',
    'not kept': 'Ce que vous avez dit ne peut pas être gardé. Libérez de la place sur le disque, puis redites le mot.',
    'not erased': 'Les mots appris ne peuvent pas être effacés pour l’instant. Réessayez.',
  },
};
