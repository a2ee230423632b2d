// French: what asks the logbook, and what names the next lens.
import type { Naming, SpokenQuestion } from '../heardLanguage.ts';

export const QUESTION: SpokenQuestion = {
  openings: ['recherche', 'recherches', 'rechercher', 'recherchez'],
  everyday: [
    'cherche',
    'cherche moi',
    'chercher',
    'trouve',
    'trouve moi',
    'trouver',
    'retrouve',
    'montre',
    'montre moi',
    'affiche',
    'afficher',
    'donne le',
    'donne moi le',
    'regarde le',
    'vérifie le',
    'c’est quoi',
    'c’était quoi',
    'quel est',
    'quelle est',
    'quel était',
    'quelle était',
    'qu’est ce que j’ai',
    'combien pour',
    'combien pour le',
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
