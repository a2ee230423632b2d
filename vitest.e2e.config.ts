// Real browsers: two test files at a time, since most of their time is spent waiting; no retries. `npm run e2e` builds the
// extension first.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/e2e/**/*.test.ts'],
    maxWorkers: 2,
    testTimeout: 120_000,
    hookTimeout: 60_000,
    retry: 0,
  },
});
