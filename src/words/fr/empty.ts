// French: screens without content.
import type { EmptyWords } from '../emptyWords.ts';

const STATIONS = 'Dessin : trois places du trépied en ligne. La première est faite, la deuxième est la suivante.';

export const words: EmptyWords = {
  logbook: {
    sentence: 'Dès qu’un balayage est terminé, son objectif figure ici avec la valeur à saisir, la bande et le centre.',
    drawn: 'Dessin : deux objectifs, chacun avec sa valeur et sa bande sur la plage de corrections.',
    begin: 'Commencer par un objectif',
  },
  plan: {
    sentence: 'Le programme part de votre matériel : ce qu’il faut mesurer, dans l’ordre qui déplace le moins le trépied.',
    drawn: STATIONS,
    begin: 'Vers le matériel',
  },
  planned: {
    sentence: 'Choisissez ce qu’il faut mesurer : le programme le met dans l’ordre qui déplace le moins le trépied et change le moins de matériel.',
    drawn: STATIONS,
  },
  kit: {
    sentence: 'Vos boîtiers et objectifs figureront ici, et chaque valeur sera gardée avec eux.',
    drawn: 'Dessin : un boîtier et un objectif qui s’y monte.',
    begin: 'Ajouter un boîtier',
  },
  photographs: {
    sentence: 'Photographiez avec l’autofocus la mire imprimée, à pleine ouverture et sans accentuation, puis importez les images ici.',
    drawn: 'Dessin : une image de la mire et de la rampe, avec un trait là où le point est tombé.',
  },
  files: {
    sentence: 'Enregistrez ici le matériel et le carnet dans un fichier, ou rétablissez-les à partir d’un fichier.',
    drawn: 'Dessin : un fichier et le carnet, avec une flèche dans chaque sens.',
  },
};
