// What travels through the browser's sync, kept: which values find room in which item, to the byte, and what is taken in of another computer.
import { describe, expect, test } from 'vitest';
import { USUAL_LIMITS } from '../../src/logbook/due.ts';
import { shelfOf } from '../../src/logbook/shelf.ts';
import { ALL_BYTES, bytesOf, ITEM_BYTES, ownKeys, pack } from '../../src/logbook/sync/pack.ts';
import { takeInCopies } from '../../src/logbook/sync/unpack.ts';
import { moment } from '../../src/units.ts';
import { orThrown } from '../kept/orThrown.ts';
import { libraryWith, sweepRecord, T0 } from './libraryWith.ts';
import { seededLibrary } from './seededLibrary.ts';

const shelfFor = (library: Parameters<typeof shelfOf>[0]) => shelfOf(library, { at: moment(T0), temperature: null }, USUAL_LIMITS);
const entries = (count: number, name: string) =>
  libraryWith({
    entries: Array.from({ length: count }, (_, at) => ({
      id: `e${at}`,
      at: T0 + at,
      subject: { situation: `s${at}`, body: name, lens: `lens ${at % 7}`, focalLength: 85, distance: 4250 },
    })),
  });
const sizesOf = ({ items, leftOut }: ReturnType<typeof pack>) =>
  [...Object.entries(items).map(([key, list]) => `${key} ${list.length} ${list[0]?.[0]} ${list.at(-1)?.[0]} ${bytesOf(JSON.stringify(list))}`), leftOut].join(
    ', ',
  );

test('each sign has its bytes: one up to U+007F, two to U+07FF, three to U+FFFF, four beyond, six where it is escaped', () => {
  const signs = ['\u007F', '\u0080', '\u07FF', '\u0800', '\uFFFF', '\u{10000}', '<', '=', '\u2027', '\u2028', '\u2029', '\u202A'];
  expect(signs.map(bytesOf)).toEqual([1, 2, 2, 3, 3, 4, 6, 1, 3, 6, 6, 3]);
});

describe('packed', () => {
  test('items are filled one after the other, and what finds no room is left out', () => {
    const names = ['Velde', 'Ö'.repeat(44)];
    expect(names.flatMap((name) => [1, 50, 98, 99, 100, 600].map((count) => sizesOf(pack('here', shelfFor(entries(count, name)), {}))))).toMatchSnapshot();
  });

  test('the room of other computers is left to them, to the byte', () => {
    const shelf = shelfFor(entries(1, 'Velde'));
    const packed = (bytes: number) => pack('here', shelf, { 'values/there/0': 'x'.repeat(bytes) }).leftOut;
    // The key, two quotation marks, 256 spare bytes, and the one value with its own key and brackets.
    const value = Object.entries(pack('here', shelf, {}).items).reduce((sum, [key, list]) => sum + key.length + JSON.stringify(list).length, 0);
    const most = ALL_BYTES - 256 - 'values/there/0'.length - 2 - value;
    expect([packed(most - 1), packed(most + 1)]).toEqual([0, 1]);
    expect(Array.from({ length: 7 }, (_, at) => packed(most - 3 + at)).join('')).toMatchSnapshot();
  });

  test('own items leave their room to the new ones, and what another computer wrote is not written again', () => {
    const library = entries(5, 'Velde');
    expect(sizesOf(pack('here', shelfFor(library), { 'values/here/0': 'x'.repeat(ALL_BYTES) }))).toBe(sizesOf(pack('here', shelfFor(library), {})));
    const theirs = { 'values/there/0': [['e3', 0], 'e2', null], 'values/there/1': 'e1', other: undefined };
    const packed = pack('here', shelfFor(library), theirs);
    expect(Object.values(packed.items).flatMap((list) => list.map(([id]) => id))).toEqual(['e4', 'e2', 'e1', 'e0']);
    expect(ownKeys('here')).toBe('values/here/');
  });

  test('of values of one moment the order is that of their ids, and one that fits no item ends it', () => {
    const at = (id: string, when: number, name = 'Velde') => ({
      id,
      at: when,
      subject: { situation: id, body: name, lens: 'l', focalLength: 85, distance: 4250 },
    });
    const ids = (...list: readonly ReturnType<typeof at>[]) => Object.values(pack('h', shelfFor(libraryWith({ entries: list })), {}).items).flatMap((item) => item.map(([id]) => id)); // prettier-ignore
    expect(ids(at('c', T0), at('a', T0), at('b', T0), at('z', T0 + 1))).toEqual(['z', 'a', 'b', 'c']);
    const long = (length: number) => {
      const shelf = shelfFor(libraryWith({ entries: [at('new', T0)] }));
      return pack('h', shelf.map((one) => ({ ...one, subject: { ...one.subject, body: 'x'.repeat(length) } })), {}).leftOut; // prettier-ignore
    };
    const rest = ITEM_BYTES - 512 - 60;
    expect(Array.from({ length: 61 }, (_, more) => long(rest - 60 + 2 * more)).join('')).toMatchSnapshot();
  });

  test('a measured value goes with an entered one where they differ', () => {
    const packed = (value: number) => {
      const library = libraryWith({ records: [sweepRecord('r', T0, 2, 8)], entries: [{ id: 'e', at: T0 + 1, value }] });
      return Object.values(pack('here', shelfFor(library), {}).items).flatMap((list) => list.map(([id, held, , kind]) => `${id} ${held} ${kind}`));
    };
    expect([packed(5), packed(4)]).toEqual([['e 5 e'], ['e 4 e', 'r 5 m']]);
    expect([1, 2].map((seed) => orThrown(() => JSON.stringify(pack('here', shelfFor(seededLibrary(seed)), {}))))).toMatchSnapshot();
  });
});

describe('taken in', () => {
  const place = ['there-1', 'velde  m1 ', 'Orrin 85 f/1.8', 85, 4250] as const;
  const took = (synced: Record<string, unknown>, library = libraryWith({})) =>
    orThrown(() => {
      const { library: after, added, unread } = takeInCopies(library, 'here', synced);
      const told = [...after.entries, ...after.byHand].map(({ id, subject }) => `${id} ${subject.situation}`);
      return [added, unread, after.entries.length, after.byHand.length, ...told].join(', ');
    });

  test('entries and measurements each in their list, and no own, foreign or spoilt ones', () => {
    const value = (id: unknown, kind = 'e') => [id, 3, T0, kind, ...place];
    const synced = { 'values/there/0': [value('a'), value('b', 'm'), value('a'), value(''), value('x'.repeat(201)), value('x'.repeat(200), 'm')], 'values/there/1': 'spoilt', 'values/here/0': [value('own')], else: [value('else')] }; // prettier-ignore
    expect(took(synced)).toMatchSnapshot();
    expect(took({ 'values/there/0': [value('e')] }, libraryWith({ entries: [{ id: 'e' }] }))).toBe('0, 0, 1, 0, e s');
    expect(took({ 'values/there/0': [value('r')] }, libraryWith({ records: [sweepRecord('r', T0, 2, 8)] }))).toBe('0, 0, 0, 0');
    expect(took({ 'values/there/0': [value('h')] }, libraryWith({ byHand: [{ id: 'h' }] }))).toBe('0, 0, 0, 1, h s');
  });

  test('a situation with the names and lengths of just one here is that one', () => {
    const synced = (situation: string, focalLength = 85, distance = 4250) => ({
      'values/t/0': [['a', 3, T0, 'e', situation, place[1], place[2], focalLength, distance]],
    });
    const twice = libraryWith({ situations: [{ id: 's' }, { id: 't' }] });
    expect([
      took(synced('there')),
      took(synced('there', 86)),
      took(synced('there', 85, 4251)),
      took(synced('s')),
      took(synced('there'), twice),
      took(synced('t', 50), twice),
    ]).toEqual(['1, 0, 1, 0, a s', '1, 0, 1, 0, a there', '1, 0, 1, 0, a there', '1, 0, 1, 0, a s', '1, 0, 1, 0, a there', '1, 0, 1, 0, a t']);
    const three = libraryWith({ situations: [{ id: 's' }, { id: 't' }, { id: 'u' }] });
    expect(took(synced('there'), three)).toBe('1, 0, 1, 0, a there');
  });
});
