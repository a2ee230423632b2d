// French: how carefully and in which order. The figures are those of simulated sweeps on a range of 41 corrections.
import type { MannerWords } from '../mannerWords.ts';

export const words: MannerWords = {
  care: 'Rigueur',
  cares: {
    quick: { label: 'Rapide', note: 'S’arrête quand le centre est sûr à un pas près. Environ 9 essais, une minute et demie.' },
    standard: { label: 'Standard', note: 'Les deux extrémités de la bande sont vues aussi. Environ 10 essais, moins de deux minutes.' },
    thorough: { label: 'Approfondie', note: 'Les valeurs des deux extrémités sont réessayées jusqu’à être sûres. Environ 13 essais, deux minutes.' },
  },
  order: 'Méthode',
  orders: {
    fewest: { label: 'Le moins d’essais', note: 'Chaque valeur est celle qui renseigne le plus vite.' },
    outward: { label: 'Pas à pas', note: 'De proche en proche, des deux côtés, pour voir changer le témoin. Demande plus d’essais.' },
  },
};
