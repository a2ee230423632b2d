// English: the settings.
import type { Settings, Theme } from '../../settings.ts';
import type { Pace } from '../../sweep/manner.ts';
import { line } from '../line.ts';
import type { Age, SettingsWords } from '../settingsWords.ts';
import { LISTENING_MEANS } from './listening.ts';
import { write } from './write.ts';

const PACED: Readonly<Record<Pace['set'], string>> = { own: 'my own pace', counted: 'counted pace' };
const LISTENS: Readonly<Record<Settings['voice']['listen'], string>> = {
  off: 'off',
  own: 'words I have taught',
  here: 'the browser, on this computer',
  browser: 'the browser\u2019s recogniser',
};
const LOOKS: Readonly<Record<Theme, string>> = { system: 'as the system', light: 'light', dark: 'dark', dim: 'dim', red: 'red' };

const AGE: Readonly<Record<Age['in'], Parameters<typeof write.count>[1]>> = {
  months: { one: '# month', other: '# months' },
  years: { one: '# year', other: '# years' },
};
const age = ({ in: unit, count }: Age): string => write.count(count, AGE[unit]);

const UNITS = { m: 'metres', ft: 'feet' } as const;

export const words: SettingsWords = {
  title: 'Settings',
  find: { label: 'Find a setting', found: (count) => (count === 0 ? 'No setting fits. Try another word.' : `${write.number(count)} found`) },
  pages: { working: 'Working', sound: 'Sound', voice: 'Voice', look: 'Look', language: 'Language', logbook: 'Logbook' },
  states: {
    working: (care, { holdTime, pace }) => line([care, write.unit(holdTime, 'second'), PACED[pace.set]]),
    sound: (speaks, tones) => line([speaks ? 'speaks every value' : 'speaks nothing', tones ? 'tones' : 'no tones']),
    voice: (listen) => LISTENS[listen],
    look: (theme, far) => line([LOOKS[theme], far && 'far view']),
    language: (screens, voice) => line([screens, voice !== null && `spoken: ${voice}`]),
    logbook: (after, carried) => line([after !== null && `due again after ${age(after)}`, carried && 'carried between your computers']),
  },
  working: {
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
  shortcut: {
    title: 'Shortcut that opens the panel',
    change: 'Change the shortcut',
    where: 'It is changed in the browser’s add-ons manager, behind the cog.',
  },
  sound: {
    speak: 'Speak every value',
    tones: { label: 'Tones', note: 'When a hold begins and ends, and when an answer is noted or refused.' },
    rate: 'Pace of speech',
    rates: { slow: 'slow', own: 'the voice’s own', brisk: 'brisk', fast: 'fast' },
    voice: 'Speaking voice',
    anyVoice: 'the computer’s choice',
  },
  look: {
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
  language: {
    screens: 'Language of the screens',
    browser: (language) => `As the browser: ${language}`,
    voice: 'Speak and understand',
    asScreens: 'The language of the screens',
    note: 'Words that you have taught belong to their language.',
    distances: 'Distances in',
    units: UNITS,
    asCountry: (unit) => `As usual in your country: ${UNITS[unit]}`,
  },
  again: {
    title: 'Due again',
    after: 'A measurement is old after',
    age,
  },
  backup: {
    title: 'Backup',
    remind: { label: 'Remind me of a backup', note: 'After five new records, or after 30 days. When Sweepbook is uninstalled, the logbook is deleted.' },
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
