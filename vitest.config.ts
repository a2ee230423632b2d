// Unit tests: everything but the real browsers; of the bench its own parts.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    environment: 'node',
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/e2e/**', 'tests/play/**'],
    passWithNoTests: false,
    // No test may need another before it. The seed is told as a run begins; `npm run unit -- --sequence.seed=N` has the same order again.
    sequence: { shuffle: { files: true, tests: true } },
    // Whole sweeps are played, and the machine may have other work: a test that hangs ends, a slow one does not.
    testTimeout: 30_000,
    setupFiles: ['tests/words/allRead.ts'],
  },
});
