// Contract of noticing a microphone from which nothing comes: within three seconds, and later where it was wrong.
import { expect, test } from 'vitest';
import { silenceNoticed } from '../../../src/platform/ear/silence.ts';

/** A look every 300 ms. */
const LOOKS_IN_3_S = 10;

/** After how many looks in a row without anything it is called silent. */
function looksUntilSilent(noticed: ReturnType<typeof silenceNoticed>): number {
  for (let looks = 1; looks < 1000; looks++) if (noticed(true) === true) return looks;
  return Infinity;
}

test('nothing at all is noticed within three seconds, once, and anything ends it at once', () => {
  const noticed = silenceNoticed();
  expect(looksUntilSilent(noticed)).toBeLessThan(LOOKS_IN_3_S);
  expect([noticed(true), noticed(false), noticed(false)]).toEqual([null, false, null]);
});

test('silence that is broken before is none', () => {
  const noticed = silenceNoticed();
  for (let word = 0; word < 20; word++) expect([noticed(true), noticed(true), noticed(true), noticed(false)]).toEqual([null, null, null, null]);
});

test('a microphone that falls silent between words is given longer each time', () => {
  const noticed = silenceNoticed();
  const waits = Array.from({ length: 4 }, () => {
    const looks = looksUntilSilent(noticed);
    noticed(false);
    return looks;
  });
  expect(waits).toEqual(waits.toSorted((a, b) => a - b));
  expect(new Set(waits).size).toBe(4);
});
