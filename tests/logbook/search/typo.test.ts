// Contract of slips: how many turn what was typed into the beginning of a word, and how many are forgiven.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { couldBegin, lettersOf, slipsForgiven, slipsToBegin } from '../../../src/logbook/search/typo.ts';

test('none is forgiven in three letters, one in four to seven, two from eight on', () => {
  expect([0, 3, 4, 7, 8, 20].map(slipsForgiven)).toEqual([0, 0, 1, 1, 2, 2]);
});

test.each([
  ['the word itself', 'corvid', 'corvid', 0],
  ['its beginning', 'corv', 'corvid', 0],
  ['a letter wrong', 'corfid', 'corvid', 1],
  ['a letter missing', 'covid', 'corvid', 1],
  ['a letter too many', 'corrvid', 'corvid', 1],
  ['a letter too many at the end', 'corvidx', 'corvid', 1],
  ['two swapped', 'covrid', 'corvid', 1],
  ['the first two swapped', 'ocrvid', 'corvid', 1],
  ['the last two swapped', 'corvdi', 'corvid', 1],
  ['swapped and one wrong', 'covrix', 'corvid', 2],
  ['two wrong', 'xorvix', 'corvid', 2],
  ['a wrong letter in the beginning of a longer word', 'cxrv', 'corvid', 1],
  ['nothing typed', '', 'corvid', 0],
])('%s: "%s" for "%s"', (_, typed, word, slips) => {
  expect(slipsToBegin(typed, word, 2)).toBe(slips);
  expect(slipsToBegin(typed, word, slips)).toBe(slips);
  expect(slips > 0 ? slipsToBegin(typed, word, slips - 1) : null).toBeNull();
});

test('more than two letters longer than the word is more than two slips', () => {
  expect(slipsToBegin('corvid', 'corv', 2)).toBe(2);
  expect(slipsToBegin('corvida', 'corv', 2)).toBeNull();
});

/** Slips to the best beginning, by the rule itself: every beginning, every letter, without a band. */
function plainly(typed: string, word: string): number {
  const known = new Map<string, number>();
  const slips = (i: number, j: number): number => {
    const key = `${i} ${j}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let least = i === 0 ? j : j === 0 ? i : Infinity;
    if (i > 0 && j > 0) {
      least = Math.min(slips(i - 1, j) + 1, slips(i, j - 1) + 1, slips(i - 1, j - 1) + Number(typed[i - 1] !== word[j - 1]));
      if (i > 1 && j > 1 && typed[i - 1] === word[j - 2] && typed[i - 2] === word[j - 1]) least = Math.min(least, slips(i - 2, j - 2) + 1);
    }
    known.set(key, least);
    return least;
  };
  return Math.min(...Array.from({ length: word.length + 1 }, (_, j) => slips(typed.length, j)));
}

test('of any two words it is what the rule gives without its band', () => {
  const letters = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 9 });
  fc.assert(
    fc.property(letters, letters, fc.integer({ min: 0, max: 3 }), (typed, word, most) => {
      const slips = plainly(typed, word);
      expect(slipsToBegin(typed, word, most)).toBe(slips > most ? null : slips);
    }),
    { numRuns: 2000 },
  );
});

test('a word can be meant while it lacks no more letters than slips', () => {
  const could = (typed: string, word: string, most: number) => couldBegin(lettersOf(typed), lettersOf(word), most);
  expect([could('abc', 'cab', 0), could('abx', 'cab', 0), could('abx', 'cab', 1), could('xyz', 'cab', 2), could('xyz', 'cab', 3)]).toEqual([
    true,
    false,
    true,
    false,
    true,
  ]);
  expect(could('', 'cab', 0)).toBe(true);
});
