// Contract of finding: what fits better comes first, slips count only where nothing fits as typed.
import { expect, test } from 'vitest';
import { find, indexOf, isKnown } from '../../../src/logbook/search/searchIndex.ts';

const index = indexOf([['Corvid 85'], ['Orrin 850'], ['Orrin 85'], ['Velde corv'], ['serial 77185'], []]);

test.each([
  ['nothing typed: all, in their order', [], [0, 1, 2, 3, 4, 5]],
  ['a whole word before the beginning of one', ['corv'], [3, 0]],
  ['a whole number; one that goes on is another, and comes behind', ['85'], [0, 2, 1]],
  ['inside a word from three signs on', ['718'], [4]],
  ['not with two', ['18'], []],
  ['all words must fit', ['orrin', '85'], [2, 1]],
  ['a slip where nothing fits as typed', ['korvid'], [0]],
  ['one word fits as typed and the other with a slip', ['orrim', '85'], [2, 1]],
  ['too many slips', ['xxrvid'], []],
  ['no slip in three letters', ['oxr'], []],
])('%s', (_, typed, found) => {
  expect(find(index, typed)).toEqual(found);
});

test('fewer slips come first', () => {
  expect(find(indexOf([['abcdefxx'], ['abcdefgx']]), ['abcdefgh'])).toEqual([1, 0]);
});

test('every word that fits adds to it, each word once a document', () => {
  expect(find(indexOf([['alpha beta'], ['alpha alphabet'], ['alpha alpha']]), ['alpha'])).toEqual([1, 0, 2]);
});

test('a word is known where any fits it', () => {
  expect(['orrin', 'korvid', 'xxrvid', '185'].map((word) => isKnown(index, word))).toEqual([true, true, false, true]);
});
