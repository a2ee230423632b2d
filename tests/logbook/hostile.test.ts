// Files that are damaged or written to harm. Whatever is read: no crash, nothing of ours changed, and no property that
// reaches every object.
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { readBackup, writeBackup } from '../../src/logbook/backup/backup.ts';
import { canonical } from '../../src/logbook/canonical.ts';
import { merge } from '../../src/logbook/backup/merge.ts';
import { planRestore } from '../../src/logbook/backup/restore.ts';
import { planTable } from '../../src/logbook/csv/planTable.ts';
import { readCsv } from '../../src/logbook/csv/csv.ts';
import { guessMapping, readRows, readTable } from '../../src/logbook/csv/readTable.ts';
import { WITH_COMMAS, WITH_SEMICOLONS } from '../../src/logbook/csv/style.ts';
import { writeTable } from '../../src/logbook/csv/writeTable.ts';
import { Library } from '../../src/logbook/library.ts';
import { takeInCopies } from '../../src/logbook/sync/unpack.ts';
import { words } from '../../src/words/catalogue.ts';
import { libraryWith, sweepRecord, T0 } from './libraryWith.ts';

const library = libraryWith({
  records: [sweepRecord('r', T0, 2, 9)],
  byHand: [{ id: 'h' }],
  entries: [{ id: 'e', record: 'r', value: 5 }],
  notes: [{ id: 'n', note: '=HYPERLINK("x")' }],
});
const before = canonical(library);
const backup = writeBackup(library, T0);
const tables = [WITH_COMMAS, WITH_SEMICOLONS].map((style) => writeTable(library, style));

const POISON = '"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}},';
const unpolluted = () => {
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  expect(Object.keys(Object.prototype)).toEqual([]);
};

/** One sentence for the person, or two. */
const SENTENCE = /^[A-Z].*\.$/s;
const { restore: toRestore, table: ofTable } = words('files');

/** A text with pieces taken out, put in, doubled and swapped. */
const mutated = (text: string, pieces: readonly string[]): fc.Arbitrary<string> =>
  fc
    .array(
      fc.record({
        at: fc.nat(text.length),
        length: fc.oneof(fc.nat(3), fc.nat(200)),
        piece: fc.oneof(fc.constantFrom(...pieces), fc.string({ unit: 'binary', maxLength: 4 })),
        how: fc.constantFrom('cut', 'put', 'double'),
      }),
      { minLength: 1, maxLength: 4 },
    )
    .map((cuts) =>
      cuts.reduce((was, { at, length, piece, how }) => {
        const [head, tail] = [was.slice(0, at), was.slice(at)];
        if (how === 'cut') return head + tail.slice(length);
        return how === 'put' ? head + piece + tail : head + tail.slice(0, length) + tail;
      }, text),
    );

/** Whatever came in, the table that goes out again holds nothing that a spreadsheet would run. */
const formulasIn = (whole: Library): string[] => {
  const lines = readCsv(writeTable(whole, WITH_COMMAS));
  const cells = lines.ok ? lines.value.flatMap((line) => line.cells) : ['=unread'];
  return cells.filter((cell) => /^\s*[=+\-@\t\r]/.test(cell) && !/^-?\d+(\.\d+)?(e[+-]\d+)?$/.test(cell));
};

describe('ten thousand damaged backups and ten thousand damaged tables', { timeout: 60_000 }, () => {
  it('are backups that are read in part or refused with a sentence, and merge into a valid logbook', () => {
    const pieces = ['{', '}', '[', ']', '"', ',', '\\u0000', '-1e999', 'null', `{${POISON}"id":"b"}`, '=HYPERLINK("x")', '@x', POISON, '9'.repeat(400)];
    const hostile = mutated(backup, pieces);
    let readable = 0;
    const whole: Library[] = [];
    fc.assert(
      fc.property(hostile, (text) => {
        const read = readBackup(text);
        unpolluted();
        expect(read.ok ? 'Read.' : toRestore.fault[read.fault]).toMatch(SENTENCE);
        if (!read.ok) return;
        readable++;
        for (const { why } of read.value.setAside) expect(toRestore.aside(why)).toMatch(SENTENCE);
        planRestore(library, read.value.library, read.value.setAside);
        whole.push(merge(library, read.value.library));
      }),
      { numRuns: 6000 },
    );
    expect(readable).toBeGreaterThan(50);
    for (const library of whole) expect([v.is(Library, library), formulasIn(library)]).toEqual([true, []]);
    expect(canonical(library)).toBe(before);
  });

  it.each(['"centre"', '"from"', '"to"'])('are backups in which %s of an outcome is beyond every number, and that record is set aside', (name) => {
    const read = readBackup(backup.replace(new RegExp(`(${name}:\\s*)-?[\\d.]+`), '$1-1e999'));
    expect(read.ok && [read.value.library.records.length, read.value.setAside.length]).toEqual([0, 1]);
  });

  it('are backups whose values were exchanged, and every item is either valid or set aside', () => {
    const paths = pathsOf(JSON.parse(backup));
    const value = fc.oneof(fc.jsonValue({ maxDepth: 2 }), fc.constantFrom<unknown>(null, -1, 1e308, '', '__proto__', [], {}, '\u0000', 'x'.repeat(5000)));
    fc.assert(
      fc.property(fc.constantFrom(...paths), value, (path, instead) => {
        const changed = exchanged(JSON.parse(backup), path, instead);
        const read = readBackup(JSON.stringify(changed).replace('{"id":', `{${POISON}"id":`));
        unpolluted();
        expect(v.is(Library, read.ok ? merge(library, read.value.library) : library)).toBe(true);
      }),
      { numRuns: 4000 },
    );
  });

  it('are tables that are read in part or refused, with the line of every fault, and give a valid logbook', () => {
    const pieces = ['"', '""', ',', ';', '\r\n', '\n', '\t', '=1+1', '@x', '1,234', '03/04/2026', '__proto__', '\uFEFF', 'e', '-'];
    const hostile = fc.oneof(...tables.map((table) => mutated(table, pieces)));
    let planned = 0;
    fc.assert(
      fc.property(hostile, (text) => {
        const read = readTable(text);
        expect(read.ok ? 'Read.' : ofTable.fault(read.fault)).toMatch(SENTENCE);
        const mapping = read.ok ? guessMapping(read.value.headings) : [];
        const rows = read.ok ? readRows(read.value, mapping) : { rows: [], faults: [] };
        const plan = planTable(library, rows, T0);
        planned += rows.rows.length;
        unpolluted();
        for (const fault of plan.faults) {
          const heading = read.ok ? (read.value.headings[mapping.findIndex((column) => column?.key === fault.column)] ?? null) : null;
          expect(ofTable.line(fault, heading)).toMatch(/^Line [\d,]+(, [^:]+)?: .+\.$/s);
        }
        expect([v.is(Library, plan.library), formulasIn(plan.library)]).toEqual([true, []]);
      }),
      { numRuns: 10_000 },
    );
    expect(planned).toBeGreaterThan(100);
  });

  it('are synced items of any shape, taken in or counted as unread', () => {
    const item = fc.oneof(
      fc.jsonValue({ maxDepth: 3 }),
      fc.array(fc.tuple(fc.string(), fc.integer(), fc.double(), fc.constantFrom('e', 'm'), fc.string(), fc.string(), fc.string(), fc.double(), fc.double())),
    );
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom('values/old/0', 'values/new/1', '__proto__', 'other'), item), (synced) => {
        const { library: whole } = takeInCopies(library, 'here', synced);
        unpolluted();
        expect(v.is(Library, whole)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('nested a hundred thousand deep are refused or read, and do not exhaust the stack', () => {
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    expect(() => readBackup(deep)).not.toThrow();
    const read = readBackup(backup.replace('"kit":', `"deep": ${deep}, "kit":`));
    expect(read.ok && merge(library, read.value.library).records).toHaveLength(1);
    expect(readBackup(backup.replace('"serial": null', `"serial": ${deep}`))).toMatchObject({ ok: true });
  });
});

type Path = readonly (string | number)[];

function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  const inside: [string | number, unknown][] = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  return [...(path.length > 0 ? [path] : []), ...inside.flatMap(([key, part]) => pathsOf(part, [...path, key]))];
}

function exchanged(value: unknown, [key, ...rest]: Path, instead: unknown): unknown {
  if (key === undefined) return instead;
  const copy = (Array.isArray(value) ? [...value] : { ...(value as object) }) as Record<string | number, unknown>;
  copy[key] = exchanged(copy[key], rest, instead);
  return copy;
}
