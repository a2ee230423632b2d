// Contract of names: what a recogniser writes for one is known again, and two lenses of other numbers are not one.
import { expect, test } from 'vitest';
import { isSameName } from '../../src/kit/told.ts';

test.each([
  ['Orrin 35', 'orrin35', true],
  ['オリン 35', 'オリン35', true],
  ['Orrin 35', 'Orrin ３５', true],
  [' Orrin  35 ', 'Orrin 35', true],
  ['Orrin 35', 'Orrin 3', false],
  ['Orrin 35', 'Corvid 35', false],
])('“%s” and “%s”: %s', (one, other, same) => {
  expect(isSameName(one, other)).toBe(same);
});
