// French: pictures that the practice camera takes.
import type { PracticePicturesWords } from '../practicePicturesWords.ts';
import { write } from './write.ts';

const STANDS = 'Il est à deux mètres de la mire et de la rampe, avec un 85 mm à f/1,8.';

export const words: PracticePicturesWords = {
  title: 'Images simulées',
  simulated: 'C’est le simulateur qui dessine ces images. Elles ne disent rien de votre propre appareil, et rien n’en est gardé.',
  about: {
    one: `Le simulateur prend une image avec l’autofocus à cette valeur. ${STANDS}`,
    check: `Le simulateur prend une image en visée écran, puis six avec l’autofocus à cette valeur. ${STANDS}`,
    bracket: `Le simulateur prend une image en visée écran, puis une à chaque valeur de la fourchette. ${STANDS}`,
  },
  take: { one: 'Prendre une image', check: 'Prendre les images', bracket: 'Prendre les images' },
  picture: (number) => `Image simulée ${write.number(number)}`,
  another: 'Autre simulateur',
  truth: {
    title: 'Ce qu’est vraiment ce simulateur',
    told: (centre, step) => `Son vrai centre est ${write.signed(centre, 1)}. Un pas déplace le point de ${write.unit(step, 'millimeter', 1)} à la mire.`,
  },
};
