// English: a person's first holds.
import type { FirstHoldWords } from '../firstHoldWords.ts';

export const words: FirstHoldWords = {
  keys: {
    elsewhere: 'Keys go to the page: click the panel.',
    holdAtStake: 'The time is up, but keys go to the page: click the panel.',
    back: 'Keys reach the panel again.',
  },
  asked: {
    short: 'Did it flicker already? Press again if it did. If not, keep holding.',
    double: 'Did it come late already? Press twice again if it did. If not, keep holding.',
    long: 'Is it dark already? Press long again if it is. If not, keep holding.',
    kept: (undoable) => `Tap to begin, then keep only the camera\u2019s button pressed.${undoable ? ' Press twice to undo.' : ''}`,
  },
  keptDouble: 'long press, then press twice',
  coach: {
    label: 'How a hold goes',
    camera: 'The camera\u2019s button lights the focus light: half-press and keep it.',
    panel: 'This switch only tells the panel: tap to begin, tap again if it fails.',
    lights: 'Watch for one of these in the hold:',
    firstAloud: 'Tap the switch to begin. Then half-press the camera\u2019s button and keep it.',
    steps: {
      dialling: {
        now: 'Dial this value into the camera.',
        press: 'Then tap the switch, half-press the camera\u2019s button and keep it.',
        aloud: 'Dial it in, tap the switch, then half-press and keep it.',
      },
      holding: {
        now: 'Keep the camera\u2019s button half-pressed and watch the light.',
        press: 'Press here only if the light fails:',
        aloud: null,
      },
      judging: {
        now: 'The time is up: let the camera\u2019s button go.',
        press: 'Tap the switch if the light stayed on. Keep it down a moment if the light failed.',
        aloud: 'Tap if the light stayed on. Long press if it failed.',
      },
    },
  },
  lights: {
    title: 'What the light can do',
    open: 'The four lights',
    close: 'Close the four lights',
    does: { steady: 'On at once, and stays on.', late: 'Comes on late.', flicker: 'Goes out, even once.', dark: 'Never comes on.' },
    when: { steady: 'after the tone', late: 'in the hold', flicker: 'in the hold', dark: 'in the hold' },
    after: 'after',
  },
  arrows: {
    title: 'What the arrows can do',
    does: { left: 'Left alone.', right: 'Right alone.', balanced: 'Both, evenly.', lopsided: 'Both, unevenly.' },
    counts: { in: 'a steady light counts as in', out: 'even a steady light counts as out' },
  },
};
