// Contract of German numbers in words: each from 0 to 1999 can be said, and is said in words of its own.
import { expect, test } from 'vitest';
import { sayWhole } from '../../../../src/hearing/languages/de/say.ts';

test('every number from 0 to 1999 is said, no two alike', () => {
  const all = (): string[] => Array.from({ length: 2000 }, (_, whole) => sayWhole(whole));
  expect(all).not.toThrow();
  expect(new Set(all()).size).toBe(2000);
  expect(new Map([0, 1, 19, 20, 21, 99, 100, 101, 999, 1000, 1001].map((whole) => [whole, sayWhole(whole)]))).toEqual(
    new Map([
      [0, 'null'],
      [1, 'eins'],
      [19, 'neunzehn'],
      [20, 'zwanzig'],
      [21, 'einundzwanzig'],
      [99, 'neunundneunzig'],
      [100, 'einhundert'],
      [101, 'einhunderteins'],
      [999, 'neunhundertneunundneunzig'],
      [1000, 'eintausend'],
      [1001, 'eintausendeins'],
    ]),
  );
});
