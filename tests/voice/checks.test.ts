// Contract of the odds in the small print: whole numbers up to a thousand, and no more than that beyond.
import { expect, test } from 'vitest';
import { evidenceInWords } from '../../src/voice/checks.ts';

test.each([
  [712.6, 'odds 713 to 1'],
  [1000, 'odds 1000 to 1'],
  [5000, 'odds more than 1000 to 1'],
])('%d is told as "%s"', (bayesFactor, told) => {
  expect(evidenceInWords({ trouble: 'never lights', bayesFactor, alike: 8, of: 8 })).toBe(`8 of 8 values looked so; ${told} against any band.`);
});
