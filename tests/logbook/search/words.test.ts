// Contract of how a text is cut into words to be found by.
import { expect, test } from 'vitest';
import { wordsIn } from '../../../src/logbook/search/words.ts';

test('a word that may be parted by a hyphen in a narrow column is one word', () => {
  expect(wordsIn('Mit der Sprach\u00aderkennung des Browsers')).toEqual(['mit', 'der', 'spracherkennung', 'des', 'browsers']);
});
