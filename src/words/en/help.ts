// English: the help.
import type { HelpWords } from '../helpWords.ts';
import { correctionSaid, taught } from '../taught.ts';

export const words: HelpWords = {
  title: 'Help',
  about:
    'The panel names a value. Dial it into the camera, half-press, and watch the focus light for the whole hold. Say what you saw. ' +
    'The panel finds the middle of the values at which the light is steady.',
  now: {
    title: 'What you can do now',
    start: 'Name a lens and start',
    practice: 'Practice camera',
    bench: 'Set up the bench',
    goOn: 'Go on with the sweep',
    watch: 'Watch the sweep of the other window',
  },
  lights: {
    title: 'What the light means',
    light: 'Light',
    counts: 'Counts as',
    is: {
      steady: { seen: 'On at once, without a gap', counts: 'in' },
      late: { seen: 'Came on late', counts: 'out, close' },
      flicker: { seen: 'Went out, even once', counts: 'out' },
      dark: { seen: 'Never came on', counts: 'out, far' },
      untold: { seen: 'Failed in some way', counts: 'out' },
    },
    note:
      'A small triangle beside a mark is an arrow of the viewfinder. A steady light with one arrow counts as out. ' +
      'A light counts as steady only when the whole hold has run.',
  },
  spoken: {
    title: 'Words and keys',
    say: 'Say',
    means: 'It means',
    key: 'Key',
    get set() {
      return `${taught('set')} ${correctionSaid(6)}`;
    },
    meanings: {
      solid: 'the light was steady',
      delayed: 'it came late',
      flicker: 'it flickered',
      nothing: 'it stayed dark',
      left: 'left arrow',
      right: 'right arrow',
      balanced: 'both arrows, even',
      lopsided: 'uneven arrows',
      holding: 'begins the hold',
      undo: 'takes back what came last',
      repeat: 'says it again',
      pause: 'the sweep waits',
      resume: 'the sweep goes on',
      skip: 'leaves this value out',
      accept: 'takes what is offered',
      'go on': 'holds more before the end',
      set: 'sets a value of your own',
      same: 'the focus is the same',
      shifted: 'the focus has shifted',
      finish: 'ends the sweep as it stands',
      help: 'says what you can say',
      'far view': 'fills the panel, or shows all of it again',
      entered: 'marks the value as entered',
      next: 'the next lens, or the next step',
      back: 'one step back',
    },
    get together() {
      return `You can say a light and an arrow together: “${taught('flicker')} ${taught('left')}”.`;
    },
  },
  presses: {
    title: 'One switch',
    about: 'The large button is the switch. So are Space, Enter, Page Down and Page Up, and a pedal or clicker that sends one of them.',
    how: {
      short: 'a press',
      double: 'two quick presses',
      long: 'a press of more than half a second',
      'kept, double': 'a long press, which begins a hold, and then two quick presses',
    },
    when: {
      dialling: 'While you dial',
      holding: 'During the hold',
      judging: 'After the end tone',
      offered: 'When the panel offers to finish',
      paused: 'While paused',
      checking: 'When asked about the focus',
      turning: 'When asked to turn the focus',
      finished: 'At the result',
    },
  },
  before: {
    title: 'Before you begin',
    steps: [
      'Stand the target square to the camera, evenly lit.',
      'Focus critically in live view at full aperture. Then switch the lens to manual and leave the ring alone.',
      'If the body focuses from a rear button, hold that button instead of the half-press.',
    ],
    manual: 'Follow your camera maker’s manual wherever it differs from this.',
  },
};
