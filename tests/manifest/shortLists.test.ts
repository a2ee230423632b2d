// Contract of shortened lists: read again they are what was written, whatever the words and however they are ordered.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shortened } from '../../manifest/shortLists.ts';
import { PRONOUNCED } from '../../src/hearing/languages/en/pronounced.ts';
import { SYMBOLS } from '../../src/hearing/languages/sounds.ts';
import { listedWords } from '../../src/hearing/languages/wordList.ts';

test('the list of English is read from its shortened form as it is written, and that is much shorter', () => {
  const short = shortened(PRONOUNCED);
  expect(listedWords(short)).toEqual(listedWords(PRONOUNCED));
  expect(short.length).toBeLessThan(0.8 * PRONOUNCED.length);
});

test('so is any list', () => {
  const word = fc.array(fc.constantFrom('a', 'b', "'"), { minLength: 1, maxLength: 12 }).map((letters) => letters.join(''));
  const sounds = fc.array(fc.constantFrom(...Object.values(SYMBOLS)), { minLength: 1, maxLength: 12 }).map((list) => list.join(''));
  fc.assert(
    fc.property(fc.array(fc.tuple(word, sounds), { minLength: 1 }), (lines) => {
      expect(listedWords(shortened(lines.map((line) => line.join(' ')).join('\n')))).toEqual(lines);
    }),
  );
});
