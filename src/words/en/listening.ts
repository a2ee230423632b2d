// English: what listening by the browser's recogniser means, shown before the first yes and where the microphone is asked for.
export const LISTENING_MEANS =
  'To understand words, the browser’s own recogniser listens through the microphone while a sweep runs and its result stands. ' +
  'Its maker may have the sound sent to a server of theirs. Sweepbook itself keeps no sound and sends none. ' +
  'Keys, the pedal and the pointer do everything that words do.';
