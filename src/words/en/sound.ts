// English: the sound check, and what is so where nothing sounds or nothing is spoken.
import type { SoundWords } from '../soundWords.ts';
import { correctionSaid } from '../taught.ts';
import { write } from './write.ts';

const percent = (value: number): string => write.percent(value / 100);

export const words: SoundWords = {
  title: 'Sound check',
  offer: 'Sound check: hear the tones and the voice once',
  play: 'Play the tones and a value',
  loudness: 'Loudness',
  percent,
  loudnessAt: (value) => `Loudness: ${percent(value)}`,
  playing: 'A rising tone begins a hold, a falling one ends it. Then a value is spoken.',
  get heard() {
    return `Did you hear two tones and “${correctionSaid(6)}”? If not, turn the computer’s sound up, or choose another output.`;
  },
  done: 'Done',
  tonesOnly: 'Did you hear two tones? Speech is off, so values are only shown.',
  get speechOnly() {
    return `Did you hear “${correctionSaid(6)}”? Tones are off, so a hold begins and ends without one.`;
  },
  standsStill: 'This computer plays no sound. Connect a loudspeaker or headphones. Until then, everything is shown.',
  mute: (language) =>
    `The browser finds no voice for ${language} on this computer, so everything is shown, with tones, but not spoken. ` +
    'To hear it spoken, install such a voice in the system’s speech settings.',
  off: 'Tones and speech are both off: only the screen says when a hold begins and ends.',
  switchOn: 'Switch both on',
};
