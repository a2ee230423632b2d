// The parts on demand that only listening needs. A test holds this list against what the build makes: a part that is gone, or
// a new one that only these ask for, fails it.
export const LISTENING: ReadonlySet<string> = new Set([
  'src/panel/session/listener.ts',
  'src/panel/session/looking.ts',
  'src/platform/ear/ear.ts',
  'src/platform/ear/listening.ts',
  'src/platform/ear/ownWords.ts',
]);
