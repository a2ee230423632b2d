// English: what is understood beside the taught words. Only a listening panel needs it.
import type { Word } from '../../sweep/inputs.ts';

export const ALSO: Record<Word, readonly string[]> = {
  solid: ['steady', 'rock solid'],
  delayed: ['delay', 'late', 'came late', 'came on late'],
  flicker: ['flickers', 'flickered', 'flickering'],
  nothing: ['dark', 'no light', 'nothing at all'],
  left: ['left arrow', 'arrow left'],
  right: ['right arrow', 'arrow right'],
  balanced: ['both equal', 'both balanced'],
  lopsided: ['lop sided', 'both lopsided'],
  holding: ['hold'],
  undo: ['undo that', 'scratch that'],
  repeat: ['repeat that', 'say again', 'say that again'],
  pause: [],
  resume: ['continue', 'carry on'],
  skip: ['skip it', 'skip this', 'skip this one'],
  accept: ['accept it', 'accept that', 'finish'],
  'go on': ['keep going'],
  set: [],
  same: ['the same', 'still the same'],
  shifted: ['it shifted', 'it has shifted'],
  finish: ['finish now', 'finish here'],
  help: ['help me'],
  next: ['next step', 'next one'],
  back: ['go back', 'step back'],
};

/** Words for the sign of a correction. */
export const SIGNS = { plus: ['plus', 'positive'], minus: ['minus', 'negative'] } as const;

/** How a recogniser spells number words; understood only right after a sign, where nothing else can stand. */
export const NUMBER_SPELLINGS: Readonly<Record<string, string>> = {
  oh: 'zero',
  o: 'zero',
  won: 'one',
  to: 'two',
  too: 'two',
  tree: 'three',
  for: 'four',
  fore: 'four',
  ate: 'eight',
};
