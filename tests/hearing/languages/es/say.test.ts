// Contract of Spanish numbers in words: each from 0 to 1999 can be said, and is said in words of its own.
import { expect, test } from 'vitest';
import { sayWhole } from '../../../../src/hearing/languages/es/say.ts';

test('every number from 0 to 1999 is said, no two alike', () => {
  const all = (): string[] => Array.from({ length: 2000 }, (_, whole) => sayWhole(whole));
  expect(all).not.toThrow();
  expect(new Set(all()).size).toBe(2000);
  expect(new Map([0, 1, 29, 30, 31, 99, 100, 101, 999, 1000, 1001].map((whole) => [whole, sayWhole(whole)]))).toEqual(
    new Map([
      [0, 'cero'],
      [1, 'uno'],
      [29, 'veintinueve'],
      [30, 'treinta'],
      [31, 'treinta y uno'],
      [99, 'noventa y nueve'],
      [100, 'cien'],
      [101, 'ciento uno'],
      [999, 'novecientos noventa y nueve'],
      [1000, 'mil'],
      [1001, 'mil uno'],
    ]),
  );
});
