// English: the words a person is taught to say. They were chosen to be far apart in sound. "Moved" and "unmoved" are left
// out on purpose: they sound alike, and one of them throws the series away.
import type { Word } from '../../../sweep/inputs.ts';

export const ENGLISH_TAG = 'en-US';

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
  'far view': 'far view',
};
