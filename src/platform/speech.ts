// Speaking, as the session knows it. What it takes is read when the panel stands, since nothing is said before.
import type { Speech } from './speaking.ts';

/** `language`: the tag of what is said. */
export function createSpeech(language: () => string): Speech {
  const speaking = import('./aloud.ts').then(({ createSpeaking }) => createSpeaking(language));
  return {
    say: (text, manner) => speaking.then((voice) => voice.say(text, manner)).catch(() => 'no voice'),
    voices: () => speaking.then((voice) => voice.voices()).catch(() => []),
    cancel: () => void speaking.then((voice) => voice.cancel()).catch(() => undefined),
  };
}
