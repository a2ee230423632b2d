// English: what the microphone mark and the voice sheet say, and what is said of a deaf ear.
import type { VoiceWords } from '../voiceWords.ts';
import { words as first } from './first.ts';
import { voiceNamed } from '../named.ts';
import { taught } from '../taught.ts';

export const words: VoiceWords = {
  mark: {
    off: first.mark.word,
    ready: 'voice on',
    begun: 'not set up',
    asking: 'asking',
    opening: 'opening',
    listening: 'listening',
    speaking: 'speaking',
    'opens when pressed': 'press, speak',
  },
  markDeaf: {
    'no microphone': 'no mic',
    'not asked': 'not allowed',
    blocked: 'mic blocked',
    'in use': 'mic in use',
    muted: 'mic muted',
    silent: 'mic silent',
    'no service': 'no service',
    'no network': 'no network',
    'no recogniser': 'teach words',
    'not on this computer': 'not ready',
    'to be downloaded': 'to download',
    'being downloaded': 'downloading',
    'not usable': 'not usable',
    get 'no language'() {
      return `no ${voiceNamed('en')}`;
    },
    'no words': 'no words yet',
    'words unreadable': 'teach again',
    'no sound': 'no sound in',
    'held back': 'press a key',
    'another window': 'other window',
    unread: 'reopen panel',
  },
  markSilent: { mute: 'not spoken', off: 'sound off' },
  marked: (shown, press) => `${shown.join(' ')}: ${press}`,
  means: {
    off: 'Voice is off.',
    ready: 'Voice is on and listens while a sweep runs.',
    begun: 'Voice is off until it is set up.',
    asking: 'The browser asks whether the microphone may be used.',
    opening: 'The microphone is being opened.',
    listening: 'Listening.',
    speaking: 'The panel speaks, and does not listen meanwhile.',
    'opens when pressed': 'It listens when the switch is pressed.',
  },
  deaf: {
    'no microphone': 'No microphone answers. Connect one. Listening then begins by itself.',
    'not asked': 'The browser has not allowed the microphone yet. Allow it. Listening then begins by itself.',
    blocked: 'The microphone is blocked for Sweepbook. The microphone page shows how to allow it again.',
    'in use': 'The microphone cannot be opened, because another program has it. Close that program. Listening then begins by itself.',
    muted: 'The microphone is muted. Unmute it on the microphone or in the system’s sound settings.',
    silent: 'Nothing at all comes from the microphone. Switch it on, or choose another in the browser or the system. Listening then begins by itself.',
    'no service': 'The browser’s recogniser does not answer. Check the network, or teach your own words. It is tried again by itself.',
    'no network': 'The network is gone, and the browser’s recogniser needs it. Keys go on working. It listens again by itself when the network is back.',
    'no recogniser': 'This browser has no recogniser of its own. Teach your own words instead.',
    'not on this computer':
      'The browser has no recogniser ready on this computer. Teach your own words, or choose the browser’s recogniser, which may send the sound away.',
    'to be downloaded': 'The browser can recognise words on this computer once it has downloaded what that takes.',
    'being downloaded': 'The browser downloads what it takes to recognise words on this computer. Listening then begins by itself.',
    'not usable': 'The browser does not allow its recogniser here. Allow it in the browser’s settings, or teach your own words instead.',
    get 'no language'() {
      return `The browser’s recogniser does not know ${voiceNamed('en')} here. Teach your own words instead.`;
    },
    'no words': 'No words are taught yet. Teach the seven words of a sweep.',
    'words unreadable': 'The words you taught cannot be read. Teach them again in the hearing check.',
    'no sound': 'This browser hands over no sound from the microphone. Keys, the pedal and the pointer do everything.',
    'held back': 'The browser holds the microphone’s sound back until you touch the panel. Press a key or click once.',
    'another window': 'Another window listens. Close it, or listen here instead.',
    unread: 'A part of the panel cannot be read. Close the panel and open it again. Nothing is lost.',
  },
  deafSaid: {
    'no microphone': 'I cannot hear you: no microphone.',
    'not asked': 'I cannot hear you: the microphone is not allowed.',
    blocked: 'I cannot hear you: the microphone is blocked.',
    'in use': 'I cannot hear you: another program has the microphone.',
    muted: 'I cannot hear you: the microphone is muted.',
    silent: 'I cannot hear you: the microphone is silent.',
    'no service': 'I cannot hear you: the recogniser does not answer.',
    'no network': 'I cannot hear you: the network is gone.',
    'no recogniser': 'I cannot hear you: this browser has no recogniser.',
    'not on this computer': 'I cannot hear you: no recogniser is ready on this computer.',
    'to be downloaded': 'I cannot hear you: the recogniser is not downloaded.',
    'being downloaded': 'I cannot hear you yet: the recogniser is being downloaded.',
    'not usable': 'I cannot hear you: the recogniser is not allowed here.',
    get 'no language'() {
      return `I cannot hear you: the recogniser does not know ${voiceNamed('en')}.`;
    },
    'no words': 'I cannot hear you: no words are taught.',
    'words unreadable': 'I cannot hear you: the taught words cannot be read.',
    'no sound': 'I cannot hear you: the browser hands over no sound.',
    'held back': 'I cannot hear you until you press a key.',
    'another window': 'Another window listens.',
    unread: 'I cannot hear you. Open the panel again.',
  },
  hearsAgain: 'I hear you again.',
  press: {
    sheet: 'Open voice',
    allow: 'Allow the microphone',
    page: 'Open the microphone page',
    teach: 'Teach your words',
    here: 'Listen here',
  },
  goes: {
    browser:
      'Your words are recognised by the browser’s own recogniser, and its maker may have the sound sent to a server of theirs. ' +
      'Sweepbook itself keeps no sound and sends none.',
    here: 'Your words are recognised by the browser on this computer. No sound leaves it and none is kept.',
    own: 'Your words are compared on this computer with how you taught them. No sound leaves it and none is kept.',
  },
  sheet: {
    title: 'Voice',
    get offered() {
      return `Say “${taught('holding')}”, “${taught('solid')}”, “${taught('flicker')}” instead of pressing keys. Keys, the pedal and the pointer go on working.`;
    },
    allow: 'Allow',
    allowAndTeach: 'Allow, then teach seven words',
    download: 'Download it',
    downloadInstead: 'Let the browser download its recogniser instead: no sound leaves this computer',
    downloading: 'Downloading',
    notDownloaded: 'It could not be downloaded. Check the network and the free space, then try again.',
    teachInstead: 'Teach seven words instead: no sound leaves this computer',
    asking: 'The browser asks whether Sweepbook may use the microphone. Answer “Allow” there. This goes on by itself.',
    once: 'If you allow it for this time only, leave that tab open while you work, because the permission ends with it.',
    askAgain: 'Ask again',
    refused: 'The microphone is blocked for Sweepbook, so voice stays off. Nothing else changes.',
    howToUnblock: 'Show how to allow it',
    leaveOff: 'Leave voice off',
    on: 'Voice is on.',
    get trial() {
      return `Try it, if you like: say “${taught('solid')}”.`;
    },
    heard: (word: string) => `Heard “${word}”.`,
    get begin() {
      return `Begin below, then say “${taught('holding')}”.`;
    },
    get toSweep() {
      return `Back to the sweep, then say “${taught('resume')}”`;
    },
    switchOff: 'Switch voice off',
    checkHearing: 'Hearing check: noise, and teaching your words',
    again: 'Try again',
    teach: (taught: number, of: number) =>
      `${taught} of ${of} words are taught. Each is said five times, which takes under two minutes in all. This goes on by itself.`,
    lesson: (said) => said.map((word) => `“${word}”`).join(', '),
    openLesson: 'Teach the seven words',
  },
};
