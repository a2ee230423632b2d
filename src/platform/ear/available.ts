// The browser's recogniser, where it has one.
export const recogniserOf = (): typeof SpeechRecognition | null =>
  globalThis.SpeechRecognition ?? globalThis.webkitSpeechRecognition ?? null;
