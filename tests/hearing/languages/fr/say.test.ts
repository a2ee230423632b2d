// Contract of French numbers in words: each from 0 to 1999 can be said, and is said in words of its own.
import { expect, test } from 'vitest';
import { sayWhole } from '../../../../src/hearing/languages/fr/say.ts';

test('every number from 0 to 1999 is said, no two alike', () => {
  const all = (): string[] => Array.from({ length: 2000 }, (_, whole) => sayWhole(whole));
  expect(all).not.toThrow();
  expect(new Set(all()).size).toBe(2000);
  expect(new Map([0, 1, 19, 20, 21, 71, 79, 80, 81, 99, 100, 101, 200, 999, 1000, 1001].map((whole) => [whole, sayWhole(whole)]))).toEqual(
    new Map([
      [0, 'zéro'],
      [1, 'un'],
      [19, 'dix-neuf'],
      [20, 'vingt'],
      [21, 'vingt et un'],
      [71, 'soixante et onze'],
      [79, 'soixante-dix-neuf'],
      [80, 'quatre-vingts'],
      [81, 'quatre-vingt-un'],
      [99, 'quatre-vingt-dix-neuf'],
      [100, 'cent'],
      [101, 'cent un'],
      [200, 'deux cents'],
      [999, 'neuf cent quatre-vingt-dix-neuf'],
      [1000, 'mille'],
      [1001, 'mille un'],
    ]),
  );
});
