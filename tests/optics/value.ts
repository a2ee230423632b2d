// Answers in tests: the value, or a failure that shows the sentence; and the sentence alone.
import type { Answer } from '../../src/optics/answer.ts';

export function value<T>(given: Answer<T>): T {
  if (given.ok) return given.value;
  throw new Error(given.say);
}

export const said = (given: Answer<unknown>): string =>
  given.ok ? `no sentence, but ${JSON.stringify(given.value)}` : given.say;
