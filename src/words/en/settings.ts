// English: the settings.
import type { SettingsWords } from '../settingsWords.ts';
import { LISTENING_MEANS } from './listening.ts';
import { write } from './write.ts';

export const words: SettingsWords = {
  title: 'Settings',
  working: {
    title: 'Working',
    holdTime: (time) => `Hold time: ${write.unit(time, 'second')}`,
    holdTimeNote: 'Five seconds is common practice.',
    pace: 'Pace',
    paces: {
      own: { label: 'My own', note: 'A press or a word begins each hold.' },
      counted: { label: 'Counted', note: 'After the time to dial, three ticks count in and the hold begins.' },
    },
    toDial: (time) => `Time to dial: ${write.unit(time, 'second')}`,
    seconds: (time) => write.unit(time, 'second'),
  },
  sound: {
    title: 'Sound',
    speak: 'Speak every value',
    tones: { label: 'Tones', note: 'When a hold begins and ends, and when an answer is noted or refused.' },
    rate: 'Pace of speech',
    rates: { slow: 'slow', own: 'the voice’s own', brisk: 'brisk', fast: 'fast' },
    voice: 'Speaking voice',
    anyVoice: 'the computer’s choice',
  },
  look: {
    title: 'Look',
    theme: 'Theme',
    themes: {
      system: { label: 'As the system' },
      light: { label: 'Light' },
      dark: { label: 'Dark' },
      dim: { label: 'Dim', note: 'For a dark studio: nothing shines.' },
      red: { label: 'Red', note: 'Red alone, so that your eyes stay used to the dark.' },
    },
    far: { label: 'Far view', note: 'A sweep fills the panel, to be read from the tripod. The word, its key or a press on the value switches it, too.' },
  },
  again: {
    title: 'Due again',
    after: 'A measurement is old after',
    months: (count) => write.count(count, { one: '# month', other: '# months' }),
    years: (count) => write.count(count, { one: '# year', other: '# years' }),
  },
  computers: {
    title: 'Your other computers',
    carry: {
      label: 'Carry the last values between them',
      note:
        'They travel through your browser account. What leaves this computer is the last value of each situation, its date, the names of body ' +
        'and lens, the focal length and the distance. Sweeps, notes and serial numbers stay here. Switch it on at each of them. When you switch ' +
        'it off, the values of this computer are taken out of the account.',
    },
  },
  listening: {
    title: 'Voice',
    by: 'Listen for my words',
    recognisers: {
      off: { label: 'No', note: 'Keys, the pedal and the pointer do everything.' },
      own: { label: 'By words I have taught', note: 'Nothing leaves this computer. Teach them in the hearing check.' },
      here: { label: 'By the browser, on this computer only', note: 'Only where the browser is ready for it. Nothing is downloaded.' },
      browser: { label: 'By the browser’s own recogniser', note: LISTENING_MEANS },
    },
    noRecogniser: 'This browser has no recogniser of its own.',
    open: 'Listen',
    openings: {
      always: { label: 'While a sweep runs' },
      pressed: { label: 'When I press the switch', note: 'For noisy rooms. Hold or tap the switch, then speak. It does nothing else then.' },
    },
    learn: {
      label: 'Learn from words that were right',
      note: 'A word that was taken, and not taken back, helps to recognise it from the next sweep on. The hearing check can forget what was learned.',
    },
    check: 'Hearing check: microphone, noise, and teaching your words',
    kept: 'The words heard in a sweep are kept with its holds, in this browser and in backup files. Sound is never kept.',
    erase: 'Erase the words that were heard',
    erased: 'What was heard is erased. Holds and verdicts are all there.',
  },
};
