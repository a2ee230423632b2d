// French: what a recogniser writes down for something else that was said.
import type { Word } from '../../../sweep/inputs.ts';
import type { MisheardNumbers } from '../heardLanguage.ts';

/** Spellings that come back for a word although they do not sound like it enough to be found by their sound. */
export const MISHEARD: Partial<Record<Word, readonly string[]>> = {
  flicker: ['clic note', 'cligne'],
  'far view': ['vue de loin de', 'vu deux loin'],
};

export const MISHEARD_NUMBERS: MisheardNumbers = {
  spellings: {
    hun: 'un',
    une: 'un',
    troie: 'trois',
    cadre: 'quatre',
    sain: 'cinq',
    saint: 'cinq',
    sein: 'cinq',
    sink: 'cinq',
    cinque: 'cinq',
    si: 'six',
    scie: 'six',
    sis: 'six',
    ci: 'six',
    cet: 'sept',
    cette: 'sept',
    set: 'sept',
    oeuf: 'neuf',
    œuf: 'neuf',
    dis: 'dix',
    disse: 'dix',
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
