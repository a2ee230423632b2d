// Real browsers: one test file at a time, no retries. `npm run e2e` builds the extension first.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/e2e/**/*.test.ts'],
    fileParallelism: false,
    testTimeout: 120_000,
    hookTimeout: 60_000,
    retry: 0,
  },
});
