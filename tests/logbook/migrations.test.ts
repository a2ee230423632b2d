import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_LIBRARY } from '../../src/logbook/library.ts';
import { migrate } from '../../src/logbook/migrations.ts';
import { readLibrary } from '../../src/logbook/readLibrary.ts';
import { contentsOf, type Stored } from '../../src/logbook/stored.ts';
import { changesBetween, libraryOf } from '../../src/logbook/storedLibrary.ts';
import { USUAL_SETTINGS } from '../../src/usualSettings.ts';
import { words } from '../../src/words/catalogue.ts';
import version1 from '../fixtures/store-1.json';
import version2 from '../fixtures/store-2.json';
import version3 from '../fixtures/store-3.json';
import { anyLibrary } from './anyLibrary.ts';

const records1 = [version1['record:r-1'], version1['record:r-2'], version1['record:r-3']];

describe('a store of version 1', () => {
  const migrated = migrate(version1);
  const stored: Stored = migrated.is === 'changed' ? migrated.stored : {};
  const { contents, spoilt } = contentsOf(stored);

  it('is read whole, and nothing in it is spoilt', () => {
    expect([migrated.is, stored['version'], spoilt]).toEqual(['changed', 3, []]);
    expect(contents.records).toEqual(records1.toReversed());
    expect(contents.settings).toMatchObject(version1.settings);
  });

  it('keeps every field of its kit', () => {
    for (const list of ['bodies', 'lenses', 'situations'] as const) {
      expect(contents.kit[list]).toMatchObject(version1.kit[list]);
    }
  });

  it('gains what later versions ask for, as not known or none', () => {
    expect(contents.kit.bodies[0]).toMatchObject({ serial: null, remembers: null, copies: 'not known', changed: 0 });
    expect(contents.kit.situations[0]).toMatchObject({ converter: null, changed: 0, retired: null });
    expect([contents.byHand, contents.entries, contents.notes, contents.proofs, contents.kit.converters]).toEqual([[], [], [], [], []]);
  });

  it('without a kit stays without one, and a spoilt kit stays as it was', () => {
    expect(migrate({ version: 1 })).toMatchObject({ stored: { version: 3 } });
    expect(migrate({ version: 1, kit: 'gone' })).toMatchObject({ stored: { kit: 'gone' } });
    expect(migrate({ version: 1, kit: { bodies: [7] } })).toMatchObject({ stored: { kit: { bodies: [7] } } });
  });
});

describe('a store of version 2', () => {
  const migrated = migrate(version2);
  const { contents, spoilt } = contentsOf(migrated.is === 'changed' ? migrated.stored : {});

  it('is read whole, with everything it had, and nothing in it is spoilt', () => {
    expect([migrated.is, spoilt, contents.proofs]).toEqual(['changed', [], []]);
    const under = (kind: string) => Object.entries(version2).flatMap(([key, item]) => (key.startsWith(`${kind}:`) ? [item] : []));
    for (const [kind, items] of Object.entries({ record: contents.records, 'by-hand': contents.byHand, entry: contents.entries, note: contents.notes })) {
      expect(items.length).toBeGreaterThan(0);
      expect(new Set<unknown>(items)).toEqual(new Set(under(kind)));
    }
    expect([contents.kit, contents.backup]).toEqual([version2.kit, version2.backup]);
    // What was not yet there to be set has its usual value.
    const { voice, logbook } = version2.settings;
    expect(contents.settings).toEqual({
      ...USUAL_SETTINGS,
      ...version2.settings,
      voice: { ...USUAL_SETTINGS.voice, ...voice },
      logbook: { ...USUAL_SETTINGS.logbook, ...logbook },
    });
  });
});

describe('a store of version 3', () => {
  it('is read whole, with every kind of what photographs showed, and nothing in it is spoilt', () => {
    const { contents, spoilt } = contentsOf(migrate(version3).is === 'current' ? version3 : {});
    expect(spoilt).toEqual([]);
    expect(contents.proofs).toEqual([version3['proof:p1'], version3['proof:p2'], version3['proof:p3'], version3['proof:p4']]);
    expect(new Set(contents.proofs.map(({ proof }) => proof.is))).toEqual(new Set(['one', 'check', 'bracket']));
    const { proofs: _, ...rest } = contents;
    expect(rest).toMatchObject({ kit: version2.kit, backup: version2.backup });
    expect(contents.records).toHaveLength(Object.keys(version2).filter((key) => key.startsWith('record:')).length);
  });

  it('is led from version 2 by a migration that changes no key', () => {
    const migrated = migrate(version2);
    expect(migrated.is === 'changed' && migrated.stored).toEqual({ ...version2, version: 3 });
  });
});

describe('any store of version 2', () => {
  it('comes to version 3 with every key as it was, and reads as the same logbook, without anything that photographs showed', () => {
    fc.assert(
      fc.property(anyLibrary(), (library) => {
        const older: Stored = { ...changesBetween(EMPTY_LIBRARY, { ...library, proofs: [] }), version: 2 };
        const migrated = migrate(older);
        const { contents, spoilt } = contentsOf(migrated.is === 'changed' ? migrated.stored : {});
        expect(migrated).toEqual({ is: 'changed', from: 2, stored: { ...older, version: 3 } });
        expect([spoilt, contents.proofs]).toEqual([[], []]);
        expect(new Set(Object.values(libraryOf(contents)).flat())).toEqual(new Set(Object.values({ ...library, proofs: [] }).flat()));
        expect(migrate(migrated.is === 'changed' ? migrated.stored : {})).toEqual({ is: 'current' });
      }),
      { numRuns: 60 },
    );
  });
});

describe('a logbook as one', () => {
  const whole = { version: 1, kit: version1.kit, records: records1 };
  const read = (stored: unknown) => {
    const result = readLibrary(stored);
    if (!result.ok) throw new Error(result.fault);
    return result.value;
  };

  it('of version 1 is read like the store of version 1', () => {
    const { library, setAside } = read(whole);
    expect([library.records, setAside]).toEqual([records1, []]);
    expect(library.kit.bodies).toMatchObject(version1.kit.bodies);
  });

  it('is read but for the items that do not fit, each set aside whole with the reason', () => {
    const damaged = structuredClone(whole) as { kit: { bodies: unknown[] }; records: { finished: unknown }[] };
    damaged.kit.bodies.push({ id: 'b-3', name: '' }, 7);
    damaged.records[1]!.finished = 'yesterday';
    const { library, setAside } = read(damaged);
    expect([library.kit.bodies.length, library.records.length]).toEqual([2, 2]);
    expect(setAside.map(({ why }) => why)).toEqual([
      { is: 'unfit', list: 'bodies', at: 3, field: 'name', fault: 'no name' },
      { is: 'unfit', list: 'bodies', at: 4, field: null, fault: 'does not fit' },
      { is: 'unfit', list: 'records', at: 2, field: 'finished', fault: 'does not fit' },
    ]);
    expect(setAside.map(({ why }) => words('files').restore.aside(why))).toEqual([
      'Body 3 cannot be read, because of “name” in it.',
      'Body 4 cannot be read.',
      'Sweep 2 cannot be read, because of “finished” in it.',
    ]);
    expect(setAside[2]!.item).toMatchObject({ id: 'r-2', finished: 'yesterday' });
  });

  it('has the second of two items with one id set aside', () => {
    const { library, setAside } = read({ ...whole, records: [records1[0], records1[0]] });
    expect([library.records.length, setAside.length]).toEqual([1, 1]);
  });

  it('is refused when it is none, has no version, or is newer', () => {
    for (const stored of [null, 7, 'x', []]) expect(readLibrary(stored)).toEqual({ ok: false, fault: 'no logbook' });
    for (const stored of [{}, { version: 0 }, { version: 1.5 }, { version: '2' }]) expect(readLibrary(stored)).toEqual({ ok: false, fault: 'no version' });
    expect(readLibrary({ version: 4 })).toEqual({ ok: false, fault: 'newer' });
  });

  it('comes back from the store as it was written, and a change writes only the keys it touches', () => {
    const inOrder = (library: ReturnType<typeof libraryOf>) => new Set(Object.values(library).flat());
    fc.assert(
      fc.property(anyLibrary(), anyLibrary(), (before, after) => {
        const first = changesBetween(EMPTY_LIBRARY, before);
        const { contents, spoilt } = contentsOf(JSON.parse(JSON.stringify(first)));
        expect(spoilt).toEqual([]);
        expect(inOrder(libraryOf(contents))).toEqual(inOrder(before));
        const stored = { ...first, ...changesBetween(before, after) };
        const kept = Object.fromEntries(Object.entries(stored).filter(([, value]) => value !== undefined));
        expect(inOrder(libraryOf(contentsOf(kept).contents))).toEqual(inOrder(after));
        expect(changesBetween(before, before)).toEqual({});
      }),
      { numRuns: 60 },
    );
  });
});
