// English: what a recogniser writes down for something else that was said.
import type { Word } from '../../../sweep/inputs.ts';
import type { MisheardNumbers } from '../heardLanguage.ts';

/** Spellings that come back for a word although they do not sound like it enough to be found by their sound. */
export const MISHEARD: Partial<Record<Word, readonly string[]>> = {
  delayed: ['the late'],
  nothing: ['know thing', 'no lights'],
  holding: ['hold in', 'whole thing'],
  undo: ['and do', 'on do'],
  accept: ['except'],
  entered: ['interred', 'centered', 'centred', 'inter', 'and third', 'and turned'],
};

export const MISHEARD_NUMBERS: MisheardNumbers = {
  spellings: {
    oh: 'zero',
    o: 'zero',
    won: 'one',
    to: 'two',
    too: 'two',
    tree: 'three',
    free: 'three',
    for: 'four',
    fore: 'four',
    hive: 'five',
    sex: 'six',
    sicks: 'six',
    heaven: 'seven',
    ate: 'eight',
    nein: 'nine',
    niner: 'nine',
    tan: 'ten',
    tin: 'ten',
  },
  // "Thirty" and "thirteen".
  takenFor: [3, 4, 5, 6, 7, 8, 9].map((digit) => [10 * digit, 10 + digit] as const),
};
