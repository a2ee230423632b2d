// English: what the one switch does, and what a press tells.
import type { SweepWords } from '../sweepWords.ts';

export const press: SweepWords['press'] = {
  is: { short: 'press', double: 'press twice', long: 'long press' },
  means: {
    solid: 'it was steady',
    delayed: 'it came late',
    flicker: 'it flickered',
    nothing: 'it stayed dark',
    failed: 'it failed',
    left: 'left arrow',
    right: 'right arrow',
    balanced: 'both arrows, even',
    lopsided: 'uneven arrows',
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
  },
};
