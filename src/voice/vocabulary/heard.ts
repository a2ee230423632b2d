// English: what is understood beside the taught words. Only a listening panel needs it.
import type { Word } from '../../sweep/inputs.ts';

export const ALSO: Record<Word, readonly string[]> = {
  solid: ['steady', 'rock solid'],
  delayed: ['delay', 'late', 'came late', 'came on late'],
  flicker: ['flickers', 'flickered', 'flickering'],
  nothing: ['dark', 'no light', 'nothing at all'],
  left: ['left arrow', 'arrow left'],
  right: ['right arrow', 'arrow right'],
  balanced: ['both even', 'both equal', 'both balanced'],
  lopsided: ['lop sided', 'uneven', 'both uneven', 'both lopsided'],
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
  entered: ['it is entered', 'entered it', 'enter', 'mark it', 'mark as entered'],
  next: ['next step', 'next one', 'next lens'],
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
};

/** Spellings that come back for a word although they do not sound like it enough to be found by their sound. */
export const MISHEARD: Partial<Record<Word, readonly string[]>> = {
  delayed: ['the late'],
  nothing: ['know thing', 'no lights'],
  holding: ['hold in', 'whole thing'],
  undo: ['and do', 'on do'],
  accept: ['except'],
  entered: ['interred', 'centered', 'centred', 'inter', 'and third', 'and turned'],
};

/** Words around a command that say nothing. */
export const FILLERS: readonly string[] = [
  'um', 'uh', 'er', 'ah', 'please', 'okay', 'ok', 'now', 'the', 'a', 'it', 'its', 'is', 'that', 'thats', 'so', 'and',
  'well', 'just', 'yeah', 'im', 'i', 'am', 'there',
];

/** What may stand before a value. */
export const SETTING: readonly string[] = ['set', 'set it', 'set to', 'set it to', 'set the value', 'value', 'make it'];

/** What asks the logbook. */
export const LOOK_UP: readonly string[] = ['look up', 'lookup', 'look it up', 'search for', 'search'];
