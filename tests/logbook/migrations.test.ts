import { describe, expect, it } from 'vitest';
import { EMPTY_LIBRARY } from '../../src/logbook/library.ts';
import { migrate } from '../../src/logbook/migrations.ts';
import { readLibrary } from '../../src/logbook/readLibrary.ts';
import version1 from '../fixtures/store-1.json';

const read = (stored: unknown) => {
  const result = readLibrary(stored);
  if (!result.ok) throw new Error(result.sentence);
  return result.value;
};

describe('a store of version 1', () => {
  const { library, setAside } = read(version1);

  it('is read whole, and nothing is set aside', () => {
    expect(setAside).toEqual([]);
    expect(library.kit.bodies.map(({ id }) => id)).toEqual(version1.kit.bodies.map(({ id }) => id));
    expect(library.records).toEqual(version1.records);
  });

  it('keeps every field it had', () => {
    for (const list of ['bodies', 'lenses', 'situations'] as const) {
      version1.kit[list].forEach((old, index) => expect(library.kit[list][index]).toMatchObject(old));
    }
  });

  it('gains what version 2 asks for, as not known', () => {
    expect(library.kit.bodies[0]).toMatchObject({
      serial: null,
      remembers: null,
      copies: 'not known',
      trigger: 'half-press',
    });
    expect(library.kit.situations[0]).toMatchObject({ converter: null, changed: 0, retired: null });
    expect([library.byHand, library.entries, library.notes, library.kit.converters]).toEqual([[], [], [], []]);
  });

  it('keeps what this program does not know beside the logbook', () => {
    const migrated = migrate({ ...version1, settings: { sound: true } });
    expect(migrated.ok && migrated.value['settings']).toEqual({ sound: true });
  });
});

describe('reading a store', () => {
  it('sets an item that does not fit aside whole, with a sentence, and reads the rest', () => {
    const damaged = structuredClone(version1) as { kit: { bodies: unknown[] }; records: { finished: unknown }[] };
    damaged.kit.bodies.push({ id: 'b-3', name: '' }, 7);
    damaged.records[1]!.finished = 'yesterday';
    const { library, setAside } = read(damaged);
    expect(library.kit.bodies).toHaveLength(2);
    expect(library.records).toHaveLength(2);
    expect(setAside.map(({ sentence }) => sentence.split(':')[0])).toEqual([
      'Body 3 was not read',
      'Body 4 was not read',
      'Sweep 2 was not read',
    ]);
    expect(setAside[2]!.item).toMatchObject({ id: 'r-2', finished: 'yesterday' });
  });

  it('sets the second of two items with one id aside', () => {
    const twice = {
      ...EMPTY_LIBRARY,
      kit: version1.kit,
      version: 1,
      records: [version1.records[0], version1.records[0]],
    };
    const { library, setAside } = read(twice);
    expect([library.records.length, setAside.length]).toEqual([1, 1]);
  });

  it('refuses what is no logbook, has no version, or is newer', () => {
    for (const stored of [null, 7, 'x', [], {}, { version: 0 }, { version: 1.5 }, { version: '2' }, { version: 3 }]) {
      expect(readLibrary(stored)).toMatchObject({ ok: false, sentence: expect.stringMatching(/\.$/) });
    }
  });
});
