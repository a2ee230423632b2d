// Real browsers, no retries. `npm run e2e` builds the extension first, and runs the tours beside what is spoken (tests/e2e/run.ts).
import { defineConfig } from 'vitest/config';
import { LongestFirst } from './tests/e2e/longestFirst.ts';

const named = (...names: readonly string[]): string[] => names.map((name) => `tests/e2e/${name}.test.ts`);

/** Words are spoken in real time, one file at a time. */
const SPOKEN = named(
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
);

/** What is asked of them is how soon something comes, or that presses are as long as they should be: no more than the cores there are. */
const TIMED = named(
  'oneSwitch',
  'firstHold',
  'recogniser',
  'photographs',
  'badPictures',
  'firstPaint',
  'firefoxHearing',
  'ownWordsInLanguages',
  'entered',
  'windows',
);

/** Every screen is looked at and measured: what that takes does not matter to what is found. */
const TOURS = named(
  'accessibility',
  'heights',
  'languages',
  'languagesInRooms',
  'languagesElsewhere',
  'library/screens',
  'benchDrawn',
  'panel',
  'target',
  'library/card',
);

export default defineConfig({
  test: {
    environment: 'node',
    testTimeout: 120_000,
    hookTimeout: 60_000,
    retry: 0,
    // A second, the usual patience, is not much for a disk beside other work.
    expect: { poll: { timeout: 15_000 } },
    setupFiles: ['tests/e2e/wordsToSay.ts'],
    sequence: { sequencer: LongestFirst },
    projects: [
      { extends: true, test: { name: 'spoken', include: SPOKEN, maxWorkers: 1, sequence: { groupOrder: 0 } } },
      { extends: true, test: { name: 'tours', include: TOURS, maxWorkers: 2, sequence: { groupOrder: 1 } } },
      { extends: true, test: { name: 'timed', include: TIMED, maxWorkers: 2, sequence: { groupOrder: 2 } } },
      // Most of their time is spent waiting.
      {
        extends: true,
        test: {
          name: 'seen',
          include: ['tests/e2e/**/*.test.ts'],
          exclude: [...SPOKEN, ...TOURS, ...TIMED],
          maxWorkers: 3,
          sequence: { groupOrder: 3 },
        },
      },
    ],
  },
});
