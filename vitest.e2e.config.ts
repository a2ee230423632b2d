// Real browsers, no retries. Where words are spoken, one test file runs at a time; the others two at a time, since most of
// their time is spent waiting. `npm run e2e` builds the extension first.
import { defineConfig } from 'vitest/config';

const SPOKEN = [
  'voice',
  'voiceFailures',
  'microphoneFailures',
  'ownWords',
  'hearingCheck',
  'speech',
  'setUpWalk',
  'firstVoice',
  'voiceFaults',
  'voiceScreens',
  'spokenLanguages',
].map((name) => `tests/e2e/${name}.test.ts`);

export default defineConfig({
  test: {
    environment: 'node',
    testTimeout: 120_000,
    hookTimeout: 60_000,
    retry: 0,
    setupFiles: ['tests/e2e/wordsToSay.ts'],
    projects: [
      { extends: true, test: { name: 'spoken', include: SPOKEN, maxWorkers: 1, sequence: { groupOrder: 0 } } },
      {
        extends: true,
        test: { name: 'seen', include: ['tests/e2e/**/*.test.ts'], exclude: SPOKEN, maxWorkers: 2, sequence: { groupOrder: 1 } },
      },
    ],
  },
});
