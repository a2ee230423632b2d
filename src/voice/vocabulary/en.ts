// English: the words a person is taught to say, and the words the panel uses itself. Taught words were chosen to be far
// apart in sound. "Moved" and "unmoved" are left out on purpose: they sound alike, and one of them throws the series away.
import type { Press, Word } from '../../sweep/inputs.ts';
import type { PressMeaning } from '../../sweep/understood.ts';
import type { Arrows, Light } from '../../sweep/verdict.ts';

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

/** A verdict read back in a word, and told of a value: "+3, which held". */
export const LIGHT: Record<Light, { readonly noted: string; readonly did: string }> = {
  steady: { noted: 'solid', did: 'held' },
  late: { noted: 'delayed', did: 'came late' },
  flicker: { noted: 'flicker', did: 'flickered' },
  dark: { noted: 'nothing', did: 'stayed dark' },
  untold: { noted: 'failed', did: 'failed' },
};

export const ARROWS: Record<Arrows, string | null> = {
  none: null,
  left: 'left',
  right: 'right',
  balanced: 'balanced',
  lopsided: 'lopsided',
};

export const PRESS: Record<Press, string> = { short: 'press', double: 'press twice', long: 'long press' };

/** What a press tells, beside `PRESS`: "press: it flickered". */
export const PRESS_MEANS: Record<PressMeaning, string> = {
  solid: 'it held',
  delayed: 'it came late',
  flicker: 'it flickered',
  nothing: 'it stayed dark',
  failed: 'it failed',
  left: 'left arrow',
  right: 'right arrow',
  balanced: 'both arrows evenly',
  lopsided: 'both arrows, one more often',
  holding: 'begin the hold',
  undo: 'undo',
  repeat: 'say it again',
  pause: 'pause',
  resume: 'resume',
  skip: 'skip this value',
  accept: 'accept',
  'go on': 'go on',
  same: 'the focus is the same',
  shifted: 'the focus has shifted',
  turned: 'the ring is turned',
  finish: 'finish',
  help: 'help',
  entered: 'mark as entered',
  'next lens': 'next lens',
  next: 'next lens, or next step',
  back: 'one step back',
};
