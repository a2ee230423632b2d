// French: pictures that the practice camera takes.
import type { PracticePicturesWords } from '../practicePicturesWords.ts';
import { write } from './write.ts';

const STANDS = 'Il est à deux mètres devant la mire et la rampe, avec 85 mm à f/1,8.';

export const words: PracticePicturesWords = {
  title: 'Images d’entraînement',
  simulated: 'Simulation : l’appareil d’entraînement dessine ces images. Elles ne disent rien de votre appareil, et rien n’en est gardé.',
  about: {
    one: `L’appareil d’entraînement prend une image avec l’autofocus à cette valeur. ${STANDS}`,
    check: `L’appareil d’entraînement prend une image en visée écran, puis six avec l’autofocus à cette valeur. ${STANDS}`,
    bracket: `L’appareil d’entraînement prend une image en visée écran, puis une à chaque valeur de la fourchette. ${STANDS}`,
  },
  take: { one: 'Prendre une image', check: 'Prendre les images', bracket: 'Prendre les images' },
  picture: (number) => `Image d’entraînement ${write.number(number)}`,
  another: 'Autre appareil d’entraînement',
  truth: {
    title: 'Ce qu’est vraiment cet appareil d’entraînement',
    told: (centre, step) => `Son vrai centre est ${write.signed(centre, 1)}. Un pas déplace le point de ${write.unit(step, 'millimeter', 1)} à la mire.`,
  },
};
