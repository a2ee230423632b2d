// Contract of a lens named by voice: what follows the word is its name, and the word alone names nothing.
import { expect, test } from 'vitest';
import { ENGLISH_WRITTEN } from '../../src/hearing/languages/en/vocabulary.ts';
import { numberWordsIn } from '../../src/logbook/search/numberWords.ts';
import { asName, nameAfterNextIn } from '../../src/voice/nextLens.ts';

const nameAfterNext = nameAfterNextIn(ENGLISH_WRITTEN.naming);
const { inFigures } = numberWordsIn(ENGLISH_WRITTEN.numbers);

test.each([
  ['next lens Corvid eighty-five', 'Corvid 85'],
  ['Next lens corvid 35', 'Corvid 35'],
  ['next orrin two hundred', 'Orrin 200'],
  ['Next lens, Corvid 85.', 'Corvid 85'],
  ['Next lens.', null],
  ['next', null],
  ['next lens', null],
  ['next one', null],
  ['look up corvid', null],
])('“%s” names %s', (heard, name) => {
  const said = nameAfterNext(heard);
  expect(said === null ? null : asName(inFigures(said))).toBe(name);
});
