// Contracts of the logbook at its limits: what fits a record, in which order things stand, what memory makes of what was measured.
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { canonical, fingerprintOf } from '../../src/logbook/canonical.ts';
import { Conditions, unknownConditions } from '../../src/logbook/conditions.ts';
import { readCsv, writeCsv } from '../../src/logbook/csv/csv.ts';
import { USUAL_LIMITS } from '../../src/logbook/due.ts';
import { lensesOn } from '../../src/logbook/lensesOn.ts';
import { memoryFor } from '../../src/logbook/memory.ts';
import { narrow, shelfOf } from '../../src/logbook/shelf.ts';
import { ALL_BYTES, bytesOf, ITEM_BYTES, pack } from '../../src/logbook/sync/pack.ts';
import { moment } from '../../src/units.ts';
import { DAY, libraryWith, sweepRecord, T0, type Parts } from './libraryWith.ts';

const shelf = (parts: Parts) => shelfOf(libraryWith(parts), { at: moment(T0 + 30 * DAY), temperature: null }, USUAL_LIMITS);
const subject = (situation: string, more: object = {}) => ({ situation, body: 'Velde M1', lens: 'Orrin', focalLength: 85, distance: 4250, ...more });

describe('conditions', () => {
  const fits = (more: object): boolean => v.safeParse(Conditions, { ...unknownConditions(moment(0)), ...more }).success;
  test('hold light from -10 to 24, temperatures of 60 either way, firmware of 40 signs and notes of 2,000', () => {
    expect([-10.1, -10, 24, 24.1].map((light) => fits({ light }))).toEqual([false, true, true, false]);
    expect([-61, -60, 60, 61].map((temperature) => fits({ temperature }))).toEqual([false, true, true, false]);
    expect([40, 41].map((length) => fits({ firmware: 'x'.repeat(length) }))).toEqual([true, false]);
    expect([2000, 2001].map((length) => fits({ note: 'x'.repeat(length) }))).toEqual([true, false]);
  });
});

describe('one text for one content', () => {
  test('does not hang on the order of fields, and keeps that of lists', () => {
    expect(canonical({ b: [2, 1], a: { d: null, c: 'x' } })).toBe('{"a":{"c":"x","d":null},"b":[2,1]}');
    expect([canonical(null), canonical([1, 'a'])]).toEqual(['null', '[1,"a"]']);
  });

  test('has a name by FNV-1a', () => {
    // The published start and, for "a", the published hash (Fowler, Noll & Vo).
    expect(fingerprintOf('').slice(0, 8)).toBe('811c9dc5');
    expect(fingerprintOf('a').slice(0, 8)).toBe('e40c292c');
    expect(fingerprintOf('foobar').slice(0, 8)).toBe('bf9cf968');
    expect(fingerprintOf('')).toBe('811c9dc501000193');
  });
});

describe('the shelf', () => {
  const situations = ['s', 't', 'u', 'x'].map((id) => ({ id, ...(id === 'x' && { body: 'b2' }) }));
  const parts: Parts = {
    bodies: [{ id: 'b' }, { id: 'b2' }],
    situations,
    records: [sweepRecord('r', T0, 2, 8, { subject: subject('s') }), sweepRecord('q', T0 + 5 * DAY, 2, 8, { subject: subject('t') })],
    entries: [{ id: 'e', at: T0 + 2 * DAY, value: 5, subject: subject('t') }],
    notes: [{ id: 'n', at: T0 + 9 * DAY, of: 'b2' }],
  };
  const ids = (items: ReturnType<typeof shelf>) => items.map((item) => item.subject.situation);

  test('has the newest value first, and last what was never measured', () => {
    expect(ids(shelf(parts))).toEqual(['t', 's', 'u', 'x']);
  });

  test('is narrowed to one body and one question', () => {
    const all = shelf(parts);
    expect([
      ids(narrow(all, null, 'all')),
      ids(narrow(all, 'b2', 'all')),
      ids(narrow(all, null, 'never measured')),
      ids(narrow(all, null, 'not entered')),
      ids(narrow(all, null, 'retired')),
    ]).toEqual([['t', 's', 'u', 'x'], ['x'], ['u', 'x'], ['s'], []]);
    const away = shelf({ ...parts, situations: situations.map((one) => (one.id === 's' ? { ...one, retired: 5 } : one)) });
    expect([ids(narrow(away, null, 'retired')), ids(narrow(away, null, 'not entered'))]).toEqual([['s'], []]);
  });

  test('shows what is due: by a note of the body, the lens or the converter', () => {
    const due = (of: string) =>
      ids(
        narrow(
          shelf({ ...parts, converters: [{ id: 'c' }], situations: [{ id: 's' }, { id: 't', converter: 'c' }], notes: [{ id: 'n', at: T0 + 9 * DAY, of }] }),
          null,
          'due again',
        ),
      );
    expect([due('b'), due('c'), due('l'), due('other')]).toEqual([['t', 's'], ['t'], ['t', 's'], []]);
  });

  test('gives each lens of a body its lines, from short to long and near to far', () => {
    const lenses = [{ id: 'l', name: 'Orrin', serial: '7' }, { id: 'm', name: 'Alder' }]; // prettier-ignore
    const placed = [['a', 'l', 85, 9000], ['b', 'l', 85, 2000], ['c', 'l', 35, 9000], ['d', 'm', 50, 2500]] as const; // prettier-ignore
    const library = libraryWith({ lenses, situations: placed.map(([id, lens, focalLength, distance]) => ({ id, lens, focalLength, distance })) });
    const lines = lensesOn(
      { id: 'b' },
      library.kit,
      shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS),
      ({ subject: { situation, focalLength, distance } }) => ({ situation, focalLength, distance }),
    );
    expect(lines.map(({ name, serial, lines: own }) => [name, serial, own.map(({ situation }) => situation).join('')])).toEqual([['Alder', null, 'd'], ['Orrin', '7', 'cba']]); // prettier-ignore
    expect(lensesOn({ id: 'b3' }, library.kit, shelf(parts), ({ subject: own }) => own)).toEqual([]);
  });
});

describe('memory', () => {
  const kit = (widest: readonly (readonly [string, number])[]): Parts => ({
    lenses: [['l', 2] as const, ...widest].map(([id, aperture]) => ({ id, focal: { from: 85, to: 85 }, widest: { from: aperture, to: aperture } })),
    situations: [{ id: 's' }, ...widest.map(([id]) => ({ id: `s${id}`, lens: id }))],
  });
  const of = (widest: readonly (readonly [string, number])[], bands: Readonly<Record<string, readonly [number, number]>>) => {
    const parts = kit(widest);
    const records = Object.entries(bands).map(([id, [low, high]], at) => sweepRecord(`r${id}`, T0 + at, low, high, { subject: subject(`s${id}`) }));
    const library = libraryWith({ ...parts, records });
    return memoryFor(library.kit.situations[0]!, library.records, library.kit).halfWidth;
  };

  test('takes the width from three lenses as wide, to 0.4 stops', () => {
    const bands = { a: [0, 5], b: [0, 7], c: [0, 3] } as const;
    // Bands of 6, 8 and 4 values: halves of 3, 4 and 2.
    expect(of([['a', 2], ['b', 2.2], ['c', 1.8]], bands)?.median).toBeCloseTo(3, 9); // prettier-ignore
    expect(of([['a', 2], ['b', 2.2], ['c', 1.7]], bands)).toBeNull(); // prettier-ignore
    expect(of([['a', 2], ['b', 2.29], ['c', 1.8]], bands)).not.toBeNull(); // prettier-ignore
    expect(of([['a', 2], ['b', 2.3], ['c', 1.8]], bands)).toBeNull(); // prettier-ignore
    expect(of([['a', 2], ['b', 2]], { a: [0, 5], b: [0, 7] })).toBeNull(); // prettier-ignore
  });

  test('has the middle of an even number between the two, on the logarithm, and a spread within its bounds', () => {
    const four = [['a', 2], ['b', 2], ['c', 2], ['d', 2]] as const; // prettier-ignore
    expect(of(four, { a: [0, 1], b: [0, 3], c: [0, 5], d: [0, 17] })?.median).toBeCloseTo(Math.sqrt(2 * 3), 9);
    expect(of(four, { a: [0, 5], b: [0, 5], c: [0, 5], d: [0, 5] })).toEqual({ median: expect.closeTo(3, 9), logSd: 0.25 });
    expect(of(four, { a: [0, 0], b: [0, 3], c: [0, 7], d: [0, 29] })?.logSd).toBe(0.6);
    // Halves of 2, 3, 3 and 4: logarithms off by -0.4055, 0, 0 and 0.2877, over three.
    expect(of(four, { a: [0, 3], b: [0, 5], c: [0, 5], d: [0, 7] })?.logSd).toBeCloseTo(Math.sqrt((Math.log(1.5) ** 2 + Math.log(4 / 3) ** 2) / 3), 9);
  });
});

describe('a table as text', () => {
  const cells = (text: string) => {
    const lines = readCsv(text);
    return lines.ok ? lines.value.map(({ line, cells: own }) => [line, ...own]) : lines.fault;
  };
  test('tells where each line begins, also behind fields of several lines and empty ones', () => {
    expect(cells('a,b\n\n"c\nd",e\r\nf,g')).toEqual([[1, 'a', 'b'], [3, 'c\nd', 'e'], [5, 'f', 'g']]); // prettier-ignore
    expect(cells('a,\n,\n')).toEqual([[1, 'a', ''], [2, '', '']]); // prettier-ignore
    expect(cells('a,b,')).toEqual([[1, 'a', 'b', '']]);
    expect(cells('sep=;\na;b\n')).toEqual([[2, 'a', 'b']]);
    expect(cells('\uFEFFa,b')).toEqual([[1, 'a', 'b']]);
    expect(cells('a\rb')).toEqual([[1, 'a'], [2, 'b']]); // prettier-ignore
  });

  test('has quotes that are closed and stand at the ends, doubled inside', () => {
    expect(cells('"a""b", "c" ,d')).toEqual([[1, 'a"b', 'c', 'd']]);
    expect(cells('"""",x')).toEqual([[1, '"', 'x']]);
    expect(cells('a,b\n"c')).toEqual({ is: 'open quote', line: 2 });
    expect(cells('a\n"b" c,d')).toEqual({ is: 'stray quote', line: 2 });
    expect(cells('a,b"c"')).toEqual({ is: 'stray quote', line: 1 });
    expect(cells('"a\nb"c')).toEqual({ is: 'stray quote', line: 2 });
  });

  test('is written with quotes where they are needed', () => {
    expect(writeCsv([['a', 'b,c', 'd"e', ' f', 'g ', 'h\ni', 'sep=x', 'j;k']])).toBe('a,"b,c","d""e"," f","g ","h\ni","sep=x",j;k\r\n');
    expect(writeCsv([['a,b', 'c;d']], ';')).toBe('a,b;"c;d"\r\n');
  });
});

describe('what travels', () => {
  test('is counted as a browser may store it', () => {
    expect(['a', '\u007f', '\u0080', '\u07ff', '\u0800', '\uffff', '\u{1f600}', '<', '\u2028', '\u2029', '\u2027'].map(bytesOf)).toEqual([
      1, 1, 2, 2, 3, 3, 4, 6, 6, 6, 3,
    ]);
    expect(bytesOf('aé<')).toBe(9);
  });

  test('fills each item, and leaves out what others brought already, and the oldest', () => {
    const many = shelf({
      entries: Array.from({ length: 200 }, (_, n) => ({ id: `e${String(n).padStart(3, '0')}`, at: T0 + n, value: 5, subject: subject(`s${n}`) })),
    });
    const { items, leftOut } = pack('here', many, {});
    expect(leftOut).toBe(0);
    const sizes = Object.entries(items).map(([key, list]) => bytesOf(key) + bytesOf(JSON.stringify(list)));
    const one = bytesOf(JSON.stringify(Object.values(items)[0]?.[0])) + 1;
    // An item is begun only where another value would not go into the one before.
    for (const size of sizes.slice(0, -1)) expect(size).toBeGreaterThan(ITEM_BYTES - 256 - 2 * one);
    for (const size of sizes) expect(size).toBeLessThanOrEqual(ITEM_BYTES - 256 + 2);
    expect(pack('here', many, { 'values/there/0': [['e199']] }).items['values/here/0']?.[0]?.[0]).toBe('e198');
    const used = { 'values/there/0': 'x'.repeat(ALL_BYTES - 256 - 20 - 3 * one - 60) };
    const packed = pack('here', many, used);
    expect(packed.leftOut).toBeGreaterThan(195);
    expect(packed.leftOut).toBeLessThan(200);
  });

  test('of one moment, the first id comes first; entered and measured travel both where they differ', () => {
    const of = (parts: Parts) => Object.values(pack('here', shelf(parts), {}).items).flatMap((list) => list.map(([id, , , kind]) => `${id} ${kind}`));
    expect(of({ entries: [{ id: 'b', at: T0, subject: subject('t') }, { id: 'a', at: T0, subject: subject('s') }] })).toEqual(['a e', 'b e']); // prettier-ignore
    expect(of({ records: [sweepRecord('r', T0, 2, 8)], entries: [{ id: 'e', at: T0 + DAY, value: 5 }] })).toEqual(['e e']);
    expect(of({ records: [sweepRecord('r', T0, 2, 8)], entries: [{ id: 'e', at: T0 + DAY, value: 9 }] })).toEqual(['e e', 'r m']);
    expect(of({ records: [sweepRecord('r', T0, 2, 8)] })).toEqual(['r m']);
  });
});
