import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { USUAL_LIMITS } from '../../src/logbook/due.ts';
import { EMPTY_LIBRARY, type Library } from '../../src/logbook/library.ts';
import { ENGLISH_WRITTEN } from '../../src/hearing/languages/en/vocabulary.ts';
import { lookUpTyped, finderOf } from '../../src/logbook/search/finder.ts';
import { shelfOf } from '../../src/logbook/shelf.ts';
import { ALL_BYTES, bytesOf, ITEM_BYTES, ownKeys, pack } from '../../src/logbook/sync/pack.ts';
import { takeInCopies } from '../../src/logbook/sync/unpack.ts';
import { anyLibrary } from './anyLibrary.ts';
import { DAY, libraryWith, sweepRecord, T0 } from './libraryWith.ts';

const shelf = (library: Library) => shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS);
const sizeOf = ([key, value]: [string, unknown]) => new TextEncoder().encode(key + JSON.stringify(value)).length;
type Synced = Record<string, unknown>;

/** Writes as a browser would: this computer's items in place of those it had. */
function write(synced: Synced, computer: string, library: Library): Synced {
  const others = Object.entries(synced).filter(([key]) => !key.startsWith(ownKeys(computer)));
  return { ...Object.fromEntries(others), ...pack(computer, shelf(library), synced).items };
}

describe('last values across computers', { timeout: 60_000 }, () => {
  it('keep within the room that sync has, whatever the names, and leave the oldest out first', () => {
    const many = (count: number, name: string) =>
      libraryWith({
        entries: Array.from({ length: count }, (_, n) => ({
          id: `e${n}`,
          at: T0 + n,
          value: 5,
          subject: { situation: `s${n}`, body: name, lens: name, focalLength: 85, distance: 4250 },
        })),
      });
    for (const name of ['Velde', 'Ö'.repeat(60), '<'.repeat(60), '😀'.repeat(30)]) {
      const packed = pack('here', shelf(many(1500, name)), {});
      const sizes = Object.entries(packed.items).map(sizeOf);
      expect(Math.max(...sizes)).toBeLessThanOrEqual(ITEM_BYTES);
      expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(ALL_BYTES);
      const ids = Object.values(packed.items).flatMap((list) => list.map(([id]) => id));
      expect(ids.length + packed.leftOut).toBe(1500);
      expect([ids[0], ids.length > 100]).toEqual(['e1499', true]);
    }
    expect(pack('here', shelf(many(1500, 'Velde')), {}).leftOut).toBeLessThan(600);
  });

  it('leave other computers the room they use', () => {
    const library = libraryWith({ entries: [{ id: 'e' }] });
    const full = { 'values/there/0': 'x'.repeat(ALL_BYTES - 300) };
    expect(pack('here', shelf(library), full)).toEqual({ items: {}, leftOut: 1 });
  });

  it('arrive at a computer that knows nothing, and answer there by name', () => {
    const bench = libraryWith({
      records: [sweepRecord('r', T0, 2, 9)],
      entries: [{ id: 'e', at: T0 + DAY, value: 5, record: 'r' }],
    });
    const { library, added, unread } = takeInCopies(EMPTY_LIBRARY, 'laptop', write({}, 'bench', bench));
    expect([added, unread]).toEqual([1, 0]);
    expect(lookUpTyped(finderOf(ENGLISH_WRITTEN, library.kit, shelf(library)), 'velde 85')).toMatchObject([{ value: 5, state: 'entered' }]);
  });

  it('leave the latest standing and keep both in the history, on both computers', () => {
    const one = libraryWith({ entries: [{ id: 'one', at: T0, value: 3 }] });
    const two = libraryWith({ entries: [{ id: 'two', at: T0 + DAY, value: 7 }] });
    const synced = write(write({}, 'one', one), 'two', two);
    for (const library of [takeInCopies(one, 'one', synced).library, takeInCopies(two, 'two', synced).library]) {
      const standing = shelf(library)[0]!;
      expect([standing.value, standing.history.entries.map(({ value }) => value)]).toEqual([7, [3, 7]]);
    }
  });

  it('do not come back to where they came from, nor twice', () => {
    fc.assert(
      fc.property(anyLibrary(2), anyLibrary(2), (a, b) => {
        const synced = write(write({}, 'a', a), 'b', b);
        const once = takeInCopies(b, 'b', synced);
        expect(once.unread).toBe(0);
        expect(takeInCopies(once.library, 'b', synced).added).toBe(0);
        expect(takeInCopies(a, 'a', write({}, 'a', a)).added).toBe(0);
        const again = Object.entries(write(synced, 'b', once.library));
        const idsOf = (computer: string) =>
          again.filter(([key]) => key.startsWith(ownKeys(computer))).flatMap(([, list]) => (list as string[][]).map(([id]) => id));
        expect(idsOf('b').filter((id) => idsOf('a').includes(id))).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  it('count bytes at least as a browser does', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const json = JSON.stringify(text);
        expect(bytesOf(json)).toBeGreaterThanOrEqual(new TextEncoder().encode(json).length);
      }),
    );
    expect([bytesOf('"<"'), bytesOf('é'), bytesOf('\u2028'), bytesOf('😀')]).toEqual([8, 2, 6, 4]);
  });
});
