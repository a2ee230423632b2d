// English: the words the panel uses itself, beside those a person is taught to say (hearing/languages/en).
import type { Press } from '../../sweep/inputs.ts';
import type { PressMeaning } from '../../sweep/understood.ts';
import type { Arrows, Light } from '../../sweep/verdict.ts';

export { ENGLISH_TAG as LANGUAGE, TAUGHT } from '../../hearing/languages/en/words.ts';

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
