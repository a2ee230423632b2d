// English: what is understood beside the taught words.
import type { Word } from '../../../sweep/inputs.ts';

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
