// Contract of numbers in words: each from 0 to 1999 can be said, and is said in words of its own.
import { describe, expect, test } from 'vitest';
import { sayWhole as german } from '../../../src/hearing/languages/de/say.ts';
import { sayWhole as english } from '../../../src/hearing/languages/en/say.ts';
import { sayWhole as spanish } from '../../../src/hearing/languages/es/say.ts';
import { sayWhole as french } from '../../../src/hearing/languages/fr/say.ts';

const SAID: readonly (readonly [string, (whole: number) => string, readonly (readonly [number, string])[]])[] = [
  [
    'German',
    german,
    [
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
    ],
  ],
  [
    'English',
    english,
    [
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
    ],
  ],
  [
    'Spanish',
    spanish,
    [
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
    ],
  ],
  [
    'French',
    french,
    [
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
    ],
  ],
];

describe.each(SAID)('in %s', (_, sayWhole, some) => {
  test('every number from 0 to 1999 is said, no two alike', () => {
    const all = (): string[] => Array.from({ length: 2000 }, (__, whole) => sayWhole(whole));
    expect(all).not.toThrow();
    expect(new Set(all()).size).toBe(2000);
    expect(some.map(([whole]) => [whole, sayWhole(whole)])).toEqual(some);
  });
});
