// English: everything the microphone mark, the voice sheet and the sound check say.
import type { Deaf } from '../../platform/ear/deaf.ts';
import type { RecognisedBy } from '../../platform/ear/ear.ts';
import type { MarkState } from './markState.ts';
import { OFF } from './off.ts';

/** In the mark, which has room for twelve letters. */
export const MARK: Record<Exclude<MarkState['is'], 'deaf'>, string> = {
  off: OFF.word,
  ready: 'voice on',
  begun: 'not set up',
  asking: 'asking',
  opening: 'opening',
  listening: 'listening',
  speaking: 'speaking',
  'opens when pressed': 'press, speak',
};

export const MARK_DEAF: Record<Deaf, string> = {
  'no microphone': 'no mic',
  'not asked': 'not allowed',
  blocked: 'mic blocked',
  'in use': 'mic in use',
  muted: 'mic muted',
  'no service': 'no service',
  'no recogniser': 'teach words',
  'not on this computer': 'not ready',
  'not usable': 'not usable',
  'no words': 'no words yet',
  'words unreadable': 'teach again',
  'no sound': 'no sound in',
  'held back': 'press a key',
  'another window': 'other window',
  unread: 'reopen panel',
};

/** In the mark's second line. */
export const MARK_SOUND = { mute: 'not spoken', off: 'sound off' } as const;

/** Read to those who hear the screen, before what a press does. */
export const MARK_MEANS: Record<Exclude<MarkState['is'], 'deaf'>, string> = {
  off: 'Voice is off.',
  ready: 'Voice is on; it listens while a sweep runs.',
  begun: 'Voice is off until it is set up.',
  asking: 'The browser asks whether the microphone may be used.',
  opening: 'The microphone is being opened.',
  listening: 'Listening.',
  speaking: 'The panel speaks, and does not listen meanwhile.',
  'opens when pressed': 'It listens when the switch is pressed.',
};

/** What the sheet and the screen reader tell of a deaf ear: what is so, and what to do. */
export const DEAF: Record<Deaf, string> = {
  'no microphone': 'No microphone answers. Connect one; listening then begins by itself.',
  'not asked': 'The browser has not allowed the microphone yet. Allow it; listening then begins by itself.',
  blocked: 'The microphone is blocked for Sweepbook. The microphone page shows how to allow it again.',
  'in use': 'The microphone cannot be opened: another program has it. Close that program; listening then begins by itself.',
  muted: 'The microphone is muted. Unmute it on the microphone or in the system’s sound settings.',
  'no service': 'The browser’s recogniser does not answer. Check the network, or teach your own words. It is tried again by itself.',
  'no recogniser': 'This browser has no recogniser of its own. Teach your own words instead.',
  'not on this computer': 'The browser has no recogniser ready on this computer. Teach your own words, or choose the browser’s recogniser, which may send the sound away.',
  'not usable': 'The browser’s recogniser cannot be used here. Teach your own words instead.',
  'no words': 'No words are taught yet. Teach the seven words of a sweep.',
  'words unreadable': 'The words you taught cannot be read. Teach them again in the hearing check.',
  'no sound': 'This browser hands over no sound from the microphone. Keys, the pedal and the pointer do everything.',
  'held back': 'The browser holds the microphone’s sound back until you touch the panel. Press a key or click once.',
  'another window': 'Another window listens. Close it, or listen here instead.',
  unread: 'A part of the panel cannot be read. Close the panel and open it again; nothing is lost.',
};

/** Said aloud in a sweep, to somebody who sees no screen. */
export const DEAF_SAID: Record<Deaf, string> = {
  'no microphone': 'I cannot hear you: no microphone.',
  'not asked': 'I cannot hear you: the microphone is not allowed.',
  blocked: 'I cannot hear you: the microphone is blocked.',
  'in use': 'I cannot hear you: another program has the microphone.',
  muted: 'I cannot hear you: the microphone is muted.',
  'no service': 'I cannot hear you: the recogniser does not answer.',
  'no recogniser': 'I cannot hear you: this browser has no recogniser.',
  'not on this computer': 'I cannot hear you: no recogniser is ready on this computer.',
  'not usable': 'I cannot hear you: the recogniser cannot be used here.',
  'no words': 'I cannot hear you: no words are taught.',
  'words unreadable': 'I cannot hear you: the taught words cannot be read.',
  'no sound': 'I cannot hear you: the browser hands over no sound.',
  'held back': 'I cannot hear you until you press a key.',
  'another window': 'Another window listens.',
  unread: 'I cannot hear you. Open the panel again.',
};
export const HEARS_AGAIN = 'I hear you again.';

/** What one press on the mark does. */
export const MARK_PRESS = {
  sheet: 'Open voice',
  allow: 'Allow the microphone',
  page: 'Open the microphone page',
  teach: 'Teach your words',
  here: 'Listen here',
} as const;

/** Where the sound goes: two sentences before any yes. */
export const GOES: Record<RecognisedBy, string> = {
  browser:
    'Your words are recognised by the browser’s own recogniser, and its maker may have the sound sent to a server of theirs. ' +
    'Sweepbook itself keeps no sound and sends none.',
  here: 'Your words are recognised by the browser on this computer. No sound leaves it and none is kept.',
  own: 'Your words are compared on this computer with how you taught them. No sound leaves it and none is kept.',
};

export const SHEET = {
  title: 'Voice',
  offered: 'Say “holding”, “solid”, “flicker” instead of pressing keys. Keys, the pedal and the pointer go on working.',
  allow: 'Allow',
  allowAndTeach: 'Allow, then teach seven words',
  instead: { own: 'Teach seven words instead: no sound leaves this computer', browser: 'Use the browser’s recogniser instead' },
  begun: 'Voice is off until it is set up.',
  asking: 'The browser asks whether Sweepbook may use the microphone. Answer “Allow” there; this goes on by itself.',
  once: 'If you allow it for this time only, leave that tab open while you work: the permission ends with it.',
  askAgain: 'Ask again',
  refused: 'The microphone is blocked for Sweepbook, so voice stays off. Nothing else changes.',
  howToUnblock: 'Show how to allow it',
  leaveOff: 'Leave voice off',
  on: 'Voice is on.',
  trial: 'Try it, if you like: say “solid”.',
  heard: (word: string) => `Heard “${word}”.`,
  begin: 'Begin below, then say “holding”.',
  toSweep: 'Back to the sweep, then say “resume”',
  switchOff: 'Switch voice off',
  checkHearing: 'Hearing check: noise, and teaching your words',
  again: 'Try again',
  teach: (taught: number, of: number) =>
    `${taught} of ${of} words are taught. Each is said five times, which takes under two minutes in all. This goes on by itself.`,
  openLesson: 'Teach the seven words',
  takeOver: 'Take the sweep over',
} as const;

export const SOUND = {
  offer: 'Sound check: hear the tones and the voice once',
  play: 'Play the tones and a value',
  again: 'Play them again',
  loudness: 'Loudness',
  percent: (value: number) => `${value} %`,
  playing: 'A rising tone begins a hold, a falling one ends it; then a value.',
  heard: 'Did you hear two tones and “plus six”? If not, turn the computer’s sound up, or choose another output.',
  done: 'Done',
  tonesOnly: 'Did you hear two tones? Speech is off, so values are only shown.',
  speechOnly: 'Did you hear “plus six”? Tones are off, so a hold begins and ends without one.',
  standsStill: 'This computer gives no sound out. Connect a loudspeaker or headphones; until then everything is shown.',
  mute:
    'The browser finds no voice on this computer that answers, so everything is shown and sounded but not spoken. ' +
    'To have it spoken, install a voice in the system’s speech settings.',
  off: 'Tones and speech are both off: only the screen says when a hold begins and ends.',
  switchOn: 'Switch both on',
  loudnessAt0: 'At 0 % nothing is heard.',
} as const;
