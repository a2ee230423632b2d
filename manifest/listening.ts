// The parts on demand that only voice needs: listening, and the sheet on which it is switched on. A test holds this list
// against what the build makes: a part that is gone, or a new one that only these ask for, fails it.
export const LISTENING: ReadonlySet<string> = new Set([
  'src/logbook/search/numberWords.ts',
  'src/panel/session/listener.ts',
  'src/panel/session/looking.ts',
  'src/panel/voice/markTold.tsx',
  'src/panel/voice/voiceScreen.tsx',
  'src/platform/ear/asking.ts',
  'src/platform/ear/ear.ts',
  'src/platform/ear/listening.ts',
  'src/platform/ear/ownWords.ts',
]);

/** Of every language: what the voice sheet says, and its sounds, which are the one part beside what is written. */
const OF_EVERY_LANGUAGE = /^src\/(?:words\/\w\w\/voice|hearing\/languages\/\w\w\/(?!vocabulary\.)\w+)\.ts$/;

export const isForListening = (part: string): boolean => LISTENING.has(part) || OF_EVERY_LANGUAGE.test(part);
