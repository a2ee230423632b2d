// French: what a recogniser writes down for something else that was said.
import type { Word } from '../../../sweep/inputs.ts';
import type { MisheardNumbers } from '../heardLanguage.ts';

/** Spellings that come back for a word although they do not sound like it enough to be found by their sound. */
export const MISHEARD: Partial<Record<Word, readonly string[]>> = {
  flicker: ['clic note', 'cligne'],
  left: ['gosh', 'gouache'],
  right: ['étroite', 'adroite', 'droite est'],
  balanced: ['on semble', 'en sembles'],
  lopsided: ['un égal', 'bon cal'],
  help: ['et de moi', 'est de moi'],
  'far view': ['vue de loin de', 'vu deux loin'],
};

export const MISHEARD_NUMBERS: MisheardNumbers = {
  spellings: {
    hun: 'un',
    une: 'un',
    troie: 'trois',
    cadre: 'quatre',
    quat: 'quatre',
    quarte: 'quatre',
    sain: 'cinq',
    saint: 'cinq',
    sein: 'cinq',
    sink: 'cinq',
    cinque: 'cinq',
    si: 'six',
    scie: 'six',
    sis: 'six',
    ci: 'six',
    siz: 'six',
    sice: 'six',
    cet: 'sept',
    cette: 'sept',
    set: 'sept',
    huite: 'huit',
    uit: 'huit',
    huis: 'huit',
    neuve: 'neuf',
    oeuf: 'neuf',
    œuf: 'neuf',
    dis: 'dix',
    disse: 'dix',
    diss: 'dix',
    diz: 'dix',
    di: 'dix',
    once: 'onze',
    douce: 'douze',
    vin: 'vingt',
    vain: 'vingt',
    vint: 'vingt',
  },
  // "Trente" and "treize", "quarante" and "quatorze".
  takenFor: [
    [30, 13],
    [40, 14],
  ],
};
