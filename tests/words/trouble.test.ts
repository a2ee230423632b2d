// Contract of the odds behind "Figures": whole numbers up to a thousand, and no more than that beyond.
import { expect, test } from 'vitest';
import { words } from '../../src/words/catalogue.ts';

test.each([
  [712.6, '713 to 1'],
  [1000, '1,000 to 1'],
  [5000, 'more than 1,000 to 1'],
])('%d is told as "%s"', (bayesFactor, told) => {
  expect(words('trouble').evidence({ trouble: 'never lights', bayesFactor, alike: 8, of: 8 })).toBe(
    `All 8 values looked the same. Odds against any band: ${told}.`,
  );
});
