// What is asked of every screen in every language: nothing is cut, crosses its frame or scrolls sideways at 180, 240 and 360 px; folded at 360 px
// a screen is hardly higher than in English. The same, but for the height, of a language that needs half as much room again, and of one that
// is written from right to left as well, where every value reads as it does elsewhere. There is no such language yet.
import { describe, expect, test } from 'vitest';
import { once } from './once.ts';
import type { Found } from './tour.ts';

/** Each walk is one that three contracts read. */
export function holdIn(tours: readonly (readonly [screens: string, tour: () => Promise<Found>])[]): void {
  const walks = tours.map(([screens, tour]) => [screens, once(tour)] as const);
  for (const [language, asked] of [
    ['every language', 'languages'],
    ['a language that needs half as much room again', 'longer'],
    ['a language that is written from right to left', 'mirrored'],
  ] as const)
    describe(`in ${language}`, { timeout: 300_000 }, () => {
      test.for(walks)('%s', async ([, walk]) => {
        const found = await walk();
        expect(found.seen).toBeGreaterThan(0);
        expect(found[asked]).toEqual([]);
      });
    });
}
