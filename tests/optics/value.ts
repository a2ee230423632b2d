// Answers in tests: the value, or a failure that shows the sentence; and the sentence alone.
import type { Result } from '../../src/result.ts';

export function value<T>(given: Result<T>): T {
  if (given.ok) return given.value;
  throw new Error(given.sentence);
}

export const said = (given: Result): string =>
  given.ok ? `no sentence, but ${JSON.stringify(given.value)}` : given.sentence;
