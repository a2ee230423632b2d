// Spanish: what a recogniser writes down for something else that was said.
import type { Word } from '../../../sweep/inputs.ts';
import type { MisheardNumbers } from '../heardLanguage.ts';
import { sayWhole } from './say.ts';

/** What comes back for a word although it does not sound like it enough to be found by its sound. */
const SPELLINGS: Partial<Record<Word, readonly string[]>> = {
  nothing: ['cien luz', 'si luz', 'en luz'],
  holding: ['más tengo', 'van tengo', 'han tengo'],
  undo: ['des hacer', 'de hacer'],
  same: ['en tacto', 'in tacto'],
  accept: ['excepto', 'a secto'],
  back: ['a tras'],
};

/**
 * Others that people say for it, and that sound like too much of daily talk to be found by their sound, too, or begin too much of it to be
 * taken before the person has stopped: "estable" and "estaba", "sigue lloviendo".
 */
const ONLY_AS_WRITTEN: Partial<Record<Word, readonly string[]>> = {
  solid: ['estable'],
  delayed: ['tarde', 'llega tarde', 'ha llegado tarde'],
  flicker: ['intermitente'],
  nothing: ['apagado'],
  resume: ['sigue', 'seguir', 'seguimos'],
  'go on': ['sigue', 'seguir', 'seguimos'],
  repeat: ['dilo'],
  undo: ['deshago', 'deshecho'],
  shifted: ['se mueve', 'se movieron'],
  entered: ['anotado', 'apuntado', 'guardo', 'guardé'],
};

export const misheardFor = (word: Word): readonly string[] => [...(SPELLINGS[word] ?? []), ...(ONLY_AS_WRITTEN[word] ?? [])];

/** "Treintaicinco", in one word as many write it. */
const IN_ONE_WORD: Readonly<Record<string, string>> = Object.fromEntries(
  [30, 40, 50, 60, 70, 80, 90].flatMap((ten) =>
    [1, 2, 3, 4, 5, 6, 7, 8, 9].flatMap((one) => {
      const said = sayWhole(ten + one);
      const written = `${sayWhole(ten)}i${sayWhole(one)}`;
      return one === 1
        ? [
            [written, said],
            [written.slice(0, -1), said],
          ]
        : [[written, said]];
    }),
  ),
);

export const MISHEARD_NUMBERS: MisheardNumbers = {
  spellings: {
    ...IN_ONE_WORD,
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
  // "Veintisiete", "treinta y siete" and "diecisiete".
  takenFor: [6, 7, 8, 9].flatMap((digit) => [20, 30].map((ten) => [ten + digit, 10 + digit] as const)),
};
