import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical } from '../../src/logbook/canonical.ts';
import { readBackup, writeBackup } from '../../src/logbook/backup/backup.ts';
import { merge } from '../../src/logbook/backup/merge.ts';
import { backupReminder } from '../../src/logbook/backup/reminder.ts';
import { planRestore, restored } from '../../src/logbook/backup/restore.ts';
import { EMPTY_LIBRARY, type Library } from '../../src/logbook/library.ts';
import { moment } from '../../src/units.ts';
import { ownWordsOf } from '../../src/voice/ownWords/take.ts';
import { words } from '../../src/words/catalogue.ts';
import { anyLibrary } from './anyLibrary.ts';
import { DAY, libraryWith, sweepRecord, T0 } from './libraryWith.ts';

const NOW = moment(1_767_261_600_000);

const readBack = (library: Library): Library => {
  const read = readBackup(writeBackup(library, NOW));
  if (!read.ok) throw new Error(read.fault);
  expect(read.value.setAside).toEqual([]);
  return read.value.library;
};

describe('a backup', { timeout: 60_000 }, () => {
  it('restores to exactly the logbook it was made from, whatever that was', () => {
    fc.assert(
      fc.property(anyLibrary(), anyLibrary(1), (library, mine) => {
        expect(restored(mine, readBack(library), 'replace')).toEqual(library);
      }),
      { numRuns: 120 },
    );
  });

  it('is one JSON text, indented, though it is written in pieces', () => {
    fc.assert(
      fc.property(anyLibrary(), (library) => {
        expect(writeBackup(library, NOW)).toBe(`${JSON.stringify({ sweepbook: 'backup', made: NOW, library }, null, 1)}\n`);
      }),
      { numRuns: 30 },
    );
  });

  it('holds the taught words too, and without readable ones is still a backup', () => {
    const take = { word: 'solid', noise: Array<number>(8).fill(-100), frames: Array<number>(64).fill(-90) };
    const words = [ownWordsOf('en-US', [take]), ownWordsOf('de-DE', [{ ...take, word: 'stabil' }])];
    const text = writeBackup(libraryWith({}), NOW, words);
    expect(readBackup(text)).toMatchObject({ ok: true, value: { words, setAside: [] } });
    const spoilt = readBackup(text.replace('"word": "solid"', '"word": 5'));
    expect(spoilt).toMatchObject({ ok: true, value: { words: words.slice(1), setAside: [{ why: { is: 'taught words unread' } }] } });
    expect(readBackup(writeBackup(libraryWith({}), NOW))).toMatchObject({ ok: true, value: { words: [], setAside: [] } });
  });

  it('that is cut short says so, and that of another program or a newer version says that', () => {
    const text = writeBackup(libraryWith({}), NOW);
    const fault = (file: string) => {
      const read = readBackup(file);
      return read.ok ? null : read.fault;
    };
    expect(fault(text.slice(0, -20))).toBe('damaged');
    expect(fault('[1, 2]')).toBe('no backup');
    expect(fault(text.replace('"version": 3', '"version": 4'))).toBe('newer');
    expect(fault(`\uFEFF${text}`)).toBeNull();
  });
});

describe('merging two logbooks', { timeout: 60_000 }, () => {
  it('gives the same twice as once', () => {
    fc.assert(
      fc.property(anyLibrary(), anyLibrary(), (a, b) => {
        const once = merge(a, b);
        expect(canonical(merge(once, b))).toBe(canonical(once));
        expect(canonical(merge(once, a))).toBe(canonical(once));
        expect(canonical(merge(once, once))).toBe(canonical(once));
      }),
      { numRuns: 120 },
    );
  });

  it('gives the same in either order, and of three in any order', () => {
    fc.assert(
      fc.property(anyLibrary(3), anyLibrary(3), anyLibrary(3), (a, b, c) => {
        expect(canonical(merge(a, b))).toBe(canonical(merge(b, a)));
        expect(canonical(merge(merge(a, b), c))).toBe(canonical(merge(a, merge(b, c))));
      }),
      { numRuns: 120 },
    );
  });

  it('loses no record: what either had, the whole has, under its id or a name made from its content', () => {
    fc.assert(
      fc.property(anyLibrary(), anyLibrary(), (a, b) => {
        const whole = merge(a, b);
        const contents = (library: Library) => [...library.byHand, ...library.entries].map((item) => canonical({ ...item, id: null, conditions: null }));
        const kept = new Set(contents(whole));
        for (const content of [...contents(a), ...contents(b)]) expect(kept).toContain(content);
      }),
      { numRuns: 120 },
    );
  });

  it('takes the state of a body that was changed later', () => {
    const older = libraryWith({ bodies: [{ id: 'b', name: 'Velde M1', changed: 10 }] });
    const newer = libraryWith({ bodies: [{ id: 'b', name: 'Velde M1, old', changed: 20 }] });
    expect(merge(newer, older).kit.bodies[0]?.name).toBe('Velde M1, old');
    expect(merge(older, newer).kit.bodies[0]?.name).toBe('Velde M1, old');
  });
});

describe('the dry run of a restore', () => {
  const nothingElse = { lenses: [], situations: [] };
  const mine = libraryWith({
    ...nothingElse,
    bodies: [{ id: 'same' }, { id: 'newer', changed: 1 }, { id: 'older', changed: 9 }, { id: 'torn', name: 'One' }, { id: 'only here' }],
  });
  const theirs = libraryWith({
    ...nothingElse,
    bodies: [{ id: 'same' }, { id: 'newer', changed: 2 }, { id: 'older', changed: 8 }, { id: 'torn', name: 'Other' }, { id: 'new' }],
  });

  it('says of every item whether it is new, the same, newer, older or in conflict', () => {
    const plan = planRestore(mine, theirs, [{ item: 0, why: { is: 'unfit', list: 'bodies', at: 6, field: null, fault: 'does not fit' } }]);
    expect(plan.items.map(({ id, is }) => [id, is])).toEqual([
      ['same', 'same'],
      ['newer', 'newer'],
      ['older', 'older'],
      ['torn', 'conflict'],
      ['new', 'new'],
    ]);
    expect([plan.counts, plan.onlyHere]).toEqual([{ new: 1, same: 1, newer: 1, older: 1, conflict: 1, invalid: 1 }, 1]);
    expect(words('files').restore.plan(NOW, plan).join(' ')).toContain(
      'In the backup: 1 new, 1 the same as here, 1 newer than here, 1 older than here, ' +
        '1 in conflict with what is here and 1 not readable. 1 item is only here. Nothing is changed yet.',
    );
  });

  it('finds everything the same in its own backup, and everything new in an empty logbook', () => {
    fc.assert(
      fc.property(anyLibrary(), (library) => {
        const { counts, items } = planRestore(library, readBack(library), []);
        expect(counts.same).toBe(items.length);
        expect(planRestore(EMPTY_LIBRARY, library, []).counts.new).toBe(items.length);
      }),
      { numRuns: 100 },
    );
  });
});

describe('the reminder of a backup', () => {
  const library = libraryWith({ records: [sweepRecord('r', T0, 2, 9)], entries: [{ id: 'e', at: T0 + DAY }] });
  const reminder = (made: number | null, days: number) => backupReminder(library, made === null ? null : moment(made), moment(T0 + days * DAY));

  it('comes when there is none, or an old one that lacks something', () => {
    expect(reminder(null, 0)).toEqual({ is: 'none yet', unsaved: 2 });
    expect(reminder(T0, 31)).toEqual({ is: 'old', days: 31, unsaved: 1 });
  });

  it('does not come while the backup is young, or has everything', () => {
    expect([reminder(T0, 29), reminder(T0 + DAY, 400), backupReminder(EMPTY_LIBRARY, null, T0)]).toEqual([null, null, null]);
  });
});
