// French: what asks the logbook, and what names the next lens.
import type { Naming, SpokenQuestion } from '../heardLanguage.ts';

export const QUESTION: SpokenQuestion = {
  openings: ['recherche', 'recherches', 'rechercher', 'recherchez'],
  // "Un" is an article there, as "un trente-cinq" could be 135, too.
  everyday: [
    ...['cherche', 'cherche moi', 'chercher', 'trouve', 'trouve moi', 'trouver', 'retrouve', 'montre', 'montre moi', 'affiche', 'afficher'].flatMap((verb) => [
      verb,
      `${verb} un`,
    ]),
    ...['donne', 'donne moi', 'regarde', 'vérifie', 'combien pour', 'c’est combien'].flatMap((verb) => [`${verb} le`, `${verb} un`]),
    'c’est quoi',
    'c’était quoi',
    'quel est',
    'quelle est',
    'quel était',
    'quelle était',
    'qu’est ce que j’ai',
    'la valeur de',
    'la valeur du',
    'la valeur pour',
    'quelle valeur',
    'quelle correction',
    'correction',
    'la correction',
  ],
  fillers: [
    'recherche rechercher recherchez cherche chercher trouve trouver retrouve montre affiche afficher donne regarde verifie moi',
    'cest cetait quoi quel quelle est etait combien valeur correction sil te vous plait',
    'le la les l un une de du des et a au aux avec pour sur en mon ma mes ce cette',
    'millimetre millimetres mm',
  ].flatMap((words) => words.split(' ')),
};

export const NAMING: Naming = {
  openings: ['objectif suivant', 'prochain objectif', 'suivant'],
  noNames: ['objectif', 'étape'],
};
