// Contract of English numbers in words: each from 0 to 1999 can be said, and is said in words of its own.
import { expect, test } from 'vitest';
import { sayWhole } from '../../../../src/hearing/languages/en/say.ts';

test('every number from 0 to 1999 is said, no two alike', () => {
  const all = (): string[] => Array.from({ length: 2000 }, (_, whole) => sayWhole(whole));
  expect(all).not.toThrow();
  expect(new Set(all()).size).toBe(2000);
  expect(new Map([0, 1, 19, 20, 21, 99, 100, 101, 999, 1000, 1001].map((whole) => [whole, sayWhole(whole)]))).toEqual(
    new Map([
      [0, 'zero'],
      [1, 'one'],
      [19, 'nineteen'],
      [20, 'twenty'],
      [21, 'twenty one'],
      [99, 'ninety nine'],
      [100, 'one hundred'],
      [101, 'one hundred one'],
      [999, 'nine hundred ninety nine'],
      [1000, 'ten hundred'],
      [1001, 'ten hundred one'],
    ]),
  );
});
