// German: what a recogniser writes down for something else that was said.
import type { Word } from '../../../sweep/inputs.ts';
import type { MisheardNumbers } from '../heardLanguage.ts';

/**
 * Spellings that come back for a word although they do not sound like it enough to be found by their sound, and what is understood
 * only as it is spelt, because much of daily talk sounds like it.
 */
export const MISHEARD: Partial<Record<Word, readonly string[]>> = {
  delayed: ['spät'],
  nothing: ['nichts', 'onkel'],
  lopsided: ['um gleich', 'in gleich', 'an gleich', 'um gleichen'],
  holding: ['halte', 'drück', 'drückt'],
  undo: ['rückgang'],
  next: ['nächte'],
  'far view': ['vernunft sicht', 'fern sieht'],
  entered: ['ein gestellt'],
};

export const MISHEARD_NUMBERS: MisheardNumbers = {
  spellings: {
    nullt: 'null',
    ein: 'eins',
    eine: 'eins',
    einen: 'eins',
    einst: 'eins',
    zwo: 'zwei',
    zwar: 'zwei',
    frei: 'drei',
    dreh: 'drei',
    wir: 'vier',
    fier: 'vier',
    viel: 'vier',
    für: 'vier',
    fur: 'vier',
    bier: 'vier',
    ihr: 'vier',
    // With and without dots: the matcher by sound has lost them.
    fünft: 'fünf',
    funft: 'funf',
    zwölft: 'zwölf',
    zwolft: 'zwolf',
    ex: 'sechs',
    eben: 'sieben',
    üben: 'sieben',
    uben: 'sieben',
    akt: 'acht',
    achten: 'acht',
    sex: 'sechs',
    lieben: 'sieben',
    siegen: 'sieben',
    nacht: 'acht',
    achte: 'acht',
    neu: 'neun',
    neuen: 'neun',
    zehen: 'zehn',
    zehnt: 'zehn',
    elfe: 'elf',
    elfen: 'elf',
    helf: 'elf',
    hilf: 'elf',
    dreissig: 'dreißig',
  },
  // "Dreizehn" and "dreißig".
  takenFor: [3, 4, 5, 6, 7, 8, 9].map((digit) => [10 * digit, 10 + digit] as const),
};
