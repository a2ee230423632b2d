// Speaking, as the session knows it. What it takes is read when the panel stands, since nothing is said before.
export interface Speech {
  /** Ends when it has been said, cut off, or given up: then no voice on this computer answers. `loudness`: 0 to 1. */
  say(text: string, manner: { readonly rate: number; readonly voice: string; readonly loudness: number }): Promise<'said' | 'no voice'>;
  /** The names of the voices there are to choose from. */
  voices(): Promise<readonly string[]>;
  /** Cuts off what is being said. */
  cancel(): void;
}

export function createSpeech(language: string): Speech {
  const speaking = import('./speaking.ts').then(({ createSpeaking }) => createSpeaking(language));
  return {
    say: (text, manner) => speaking.then((voice) => voice.say(text, manner)).catch(() => 'no voice'),
    voices: () => speaking.then((voice) => voice.voices()).catch(() => []),
    cancel: () => void speaking.then((voice) => voice.cancel()).catch(() => undefined),
  };
}
