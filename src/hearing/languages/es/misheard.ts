// Spanish: what a recogniser writes down for something else that was said.
import type { Word } from '../../../sweep/inputs.ts';
import type { MisheardNumbers } from '../heardLanguage.ts';

/** Spellings that come back for a word although they do not sound like it enough to be found by their sound. */
export const MISHEARD: Partial<Record<Word, readonly string[]>> = {
  nothing: ['cien luz', 'si luz', 'en luz'],
  holding: ['más tengo', 'van tengo', 'han tengo'],
  undo: ['des hacer', 'de hacer'],
  same: ['en tacto', 'in tacto'],
  accept: ['excepto', 'a secto'],
  back: ['a tras', 'atraes'],
};

export const MISHEARD_NUMBERS: MisheardNumbers = {
  spellings: {
    un: 'uno',
    una: 'uno',
    veintiun: 'veintiuno',
    sero: 'cero',
    dose: 'doce',
    doze: 'doce',
    trese: 'trece',
    treze: 'trece',
    sinco: 'cinco',
    dies: 'diez',
    onze: 'once',
    vente: 'veinte',
  },
  takenFor: [],
};
