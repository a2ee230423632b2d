// Unit tests: everything but the real browsers; of the bench its own parts.
import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** Tests of rooms that keep no state between two calls: the files of one worker share what they import, which is most of what they cost. */
const PURE = ['sweep', 'kit', 'logbook', 'optics', 'photographs', 'hearing', 'voice', 'practice', 'reference'].map((name) => `tests/${name}/**/*.test.ts`);

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    environment: 'node',
    passWithNoTests: false,
    // No test may need another before it. The seed is told as a run begins; `npm run unit -- --sequence.seed=N` has the same order again.
    sequence: { shuffle: { files: true, tests: true } },
    // Whole sweeps are played, and the machine may have other work: a test that hangs ends, a slow one does not.
    testTimeout: 30_000,
    setupFiles: ['tests/words/allRead.ts'],
    // A snapshot that is missing fails: only `-u` writes one.
    update: 'none',
    pool: 'threads',
    // On two cores the usual is one worker.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: [
      { extends: true, test: { name: 'pure', include: PURE, isolate: false, sequence: { groupOrder: 1 } } },
      {
        extends: true,
        test: { name: 'alone', include: ['tests/**/*.test.{ts,tsx}'], exclude: [...PURE, 'tests/e2e/**', 'tests/play/**'] },
      },
    ],
  },
});
