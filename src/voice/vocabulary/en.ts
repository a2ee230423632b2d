// English: the words a person is taught to say, and the numbers that the panel says. Taught words were chosen to be far
// apart in sound. "Moved" and "unmoved" are left out on purpose: they sound alike, and one of them throws the series away.
import type { Word } from '../../sweep/inputs.ts';

export const LANGUAGE = 'en-US';

/** The words a person is taught to say. */
export const TAUGHT: Record<Word, string> = {
  solid: 'solid',
  delayed: 'delayed',
  flicker: 'flicker',
  nothing: 'nothing',
  left: 'left',
  right: 'right',
  balanced: 'balanced',
  lopsided: 'lopsided',
  holding: 'holding',
  undo: 'undo',
  repeat: 'repeat',
  pause: 'pause',
  resume: 'resume',
  skip: 'skip',
  accept: 'accept',
  'go on': 'go on',
  set: 'set',
  same: 'same',
  shifted: 'shifted',
  finish: 'finish',
  help: 'help',
  entered: 'entered',
  next: 'next',
  back: 'back',
};

export const ONES = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
] as const;

/** Index 2 is twenty. */
export const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'] as const;
