// Unit tests: everything but the real browsers and the bench.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    environment: 'node',
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/e2e/**', 'tests/bench/**', 'tests/play/**'],
    passWithNoTests: false,
    setupFiles: ['tests/words/allRead.ts'],
  },
});
