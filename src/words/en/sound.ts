// English: the sound check, and what is so where nothing sounds or nothing is spoken.
import type { SoundWords } from '../soundWords.ts';

export const words: SoundWords = {
  title: 'Sound check',
  offer: 'Sound check: hear the tones and the voice once',
  play: 'Play the tones and a value',
  loudness: 'Loudness',
  percent: (value: number) => `${value}%`,
  playing: 'A rising tone begins a hold, a falling one ends it. Then a value is spoken.',
  heard: 'Did you hear two tones and “plus six”? If not, turn the computer’s sound up, or choose another output.',
  done: 'Done',
  tonesOnly: 'Did you hear two tones? Speech is off, so values are only shown.',
  speechOnly: 'Did you hear “plus six”? Tones are off, so a hold begins and ends without one.',
  standsStill: 'This computer plays no sound. Connect a loudspeaker or headphones. Until then, everything is shown.',
  mute:
    'The browser finds no voice on this computer, so everything is shown, with tones, but not spoken. ' +
    'To hear it spoken, install a voice in the system’s speech settings.',
  off: 'Tones and speech are both off: only the screen says when a hold begins and ends.',
  switchOn: 'Switch both on',
};
