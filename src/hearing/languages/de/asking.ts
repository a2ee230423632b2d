// German: what asks the logbook, and what names the next lens.
import type { Naming, SpokenQuestion } from '../heardLanguage.ts';

export const QUESTION: SpokenQuestion = {
  openings: ['logbuch', 'im logbuch', 'ins logbuch', 'logbuch suche', 'schlag nach', 'schlage nach', 'nachschlagen', 'sieh nach', 'schau nach'],
  everyday: [
    'suche nach dem',
    'suche nach',
    'such nach',
    'suche das',
    'suche',
    'such das',
    'suchen',
    'nachsehen',
    'finde das',
    'finde',
    'zeig mir das',
    'zeig mir',
    'zeige mir',
    'zeige',
    'zeig',
    'was war mit',
    'was war',
    'was ist mit',
    'was ist',
    'was hat',
    'was hatte',
    'wie war',
    'wie ist',
    'wie steht',
    'welchen wert hat',
    'welchen wert hatte',
  ],
  // Without their dots, as they are compared.
  fillers: [
    'logbuch suche such suchen nach finde zeig zeige mir schlag schlage nachschlagen sieh nachsehen schau was wie ist war hat hatte steht welchen bitte wert korrektur',
    'der die das den dem des ein eine einen einem im in ins an am auf bei bis mit mein meine meinem meinen fur von vom zu zum zur und objektiv linse kamera er',
    'millimeter millimetern mm',
  ].flatMap((words) => words.split(' ')),
};

export const NAMING: Naming = {
  openings: [
    'das nächste objektiv ist',
    'nächstes objektiv ist',
    'das nächste objektiv',
    'nächstes objektiv',
    'nächste linse',
    'als nächstes',
    'weiter mit',
    'nächstes',
    'nächster',
    'nächste',
  ],
  noNames: ['objektiv', 'linse', 'schritt', 'ist', 'bitte', 'mal', 'dem nächsten'],
};
