// What happens to single items, kept: their short names and comparison, values put in by hand, joined and restored logbooks, older versions,
// lists that are damaged, and what is blanked.
import { describe, expect, test } from 'vitest';
import { coreOf, titlesIn, toldAt } from '../../src/logbook/backup/items.ts';
import { joinKits } from '../../src/logbook/backup/joinKits.ts';
import { merge, merging } from '../../src/logbook/backup/merge.ts';
import { planningRestore, planRestore, restored } from '../../src/logbook/backup/restore.ts';
import { middleOf } from '../../src/logbook/byHand.ts';
import { canonical, fingerprintOf, isSame } from '../../src/logbook/canonical.ts';
import { unknownConditions } from '../../src/logbook/conditions.ts';
import { presentVersion } from '../../src/logbook/libraryVersions.ts';
import { migrate } from '../../src/logbook/migrations.ts';
import { readingLibrary, readLibrary } from '../../src/logbook/readLibrary.ts';
import { recordByHand } from '../../src/logbook/recordByHand.ts';
import { changesBetween, comparing } from '../../src/logbook/storedLibrary.ts';
import { withoutHeard } from '../../src/logbook/withoutHeard.ts';
import type { Stepwise } from '../../src/stepwise.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { moment, steps } from '../../src/units.ts';
import { orThrown } from '../kept/orThrown.ts';
import { sevenDigits } from '../kept/sevenDigits.ts';
import { libraryWith, T0 } from './libraryWith.ts';
import { seededLibrary } from './seededLibrary.ts';

const COARSE = { min: steps(-9), max: steps(15), step: 2 };
const [one, other] = [seededLibrary(1), seededLibrary(2)];
const fingerprint = (value: unknown): string => fingerprintOf(canonical(value));

/** How far each step of a long work says it is: the first, the last, how many, and whether they count up by one. */
function stepsOf(work: Stepwise<unknown>): string {
  const far: { done: number; of: number }[] = [];
  for (let step = work.next(); !step.done; step = work.next()) far.push({ ...step.value });
  return `${far[0]?.done} ${far.at(-1)?.done} ${far.length} ${far[0]?.of} ${far.every(({ done }, at) => done === at + 1)}`;
}

describe('contents', () => {
  test('have one text and a short name', () => {
    expect(['', 'a', 'b', 'Velde M1', 'ä<\u2028', 'x'.repeat(300), 'f0', '42', 'q'].map(fingerprintOf)).toMatchSnapshot('first');
    expect([{ b: 1, a: [2, { d: null, c: 'x' }] }, [], null, 5, { a: undefined }].map((value) => orThrown(() => canonical(value)))).toMatchSnapshot('second');
  });

  test('are the same or not, all ways round', () => {
    const values = [
      null,
      undefined,
      0,
      '',
      [],
      {},
      [1],
      [1, 2],
      [2, 1],
      { a: 1 },
      { a: 1, b: undefined },
      { a: 1, b: 2 },
      { b: 2, a: 1 },
      { 0: 1 },
      { a: [1] },
      { a: [2] },
      { length: 0 },
    ];
    expect(values.map((left) => values.map((right) => Number(orThrown(() => isSame(left, right)))).join(''))).toMatchSnapshot();
    expect(values.map((value) => isSame(value, structuredClone(value))).every(Boolean)).toBe(true);
  });

  test('lose every word that was heard, and are the very same where there was none', () => {
    const journal = [
      { did: 'heard', what: 'x' },
      { did: 'judged', heard: 'solid', at: 1 },
      { did: 'judged', heard: null },
      null,
      5,
      [{ did: 'heard' }],
      { heard: 7, deep: { heard: 'y' } },
    ];
    expect(orThrown(() => JSON.stringify(withoutHeard({ journal, rest: { heard: ['z'] } })))).toMatchSnapshot();
    const clean = { journal: [{ did: 'judged', heard: null }, ['a', { b: 1 }]], none: null };
    expect([withoutHeard(clean) === clean, withoutHeard(null), withoutHeard('text'), withoutHeard([{ did: 'heard' }])]).toEqual([true, null, 'text', []]);
  });
});

describe('by hand', () => {
  const told = (scale: typeof USUAL_SCALE, ends: readonly (readonly [number, number])[]) =>
    ends.map(([low, high]) => orThrown(() => JSON.stringify(middleOf(scale, low, high))).slice(0, 70));
  test('the middle of ends, in either order, on scales of one and of two', () => {
    expect(told(USUAL_SCALE, [[2, 8], [8, 2], [2, 7], [-7, -2], [-3, 2], [-2, 3], [-20, 20], [-21, 2], [2, 21], [2.5, 3]])).toMatchSnapshot('first'); // prettier-ignore
    expect(told(COARSE, [[-9, 15], [1, 3], [1, 5], [-5, -3], [-1, 1], [-3, 1], [2, 5], [1, 6]])).toMatchSnapshot('second'); // prettier-ignore
  });

  test('a value is taken from end to end, and not beyond', () => {
    const taken = (chosen: number, ends: readonly [number, number] | null) => {
      const typed = ends ? { known: 'band' as const, one: ends[0], other: ends[1], chosen } : { known: 'value' as const, chosen };
      const subject = { situation: 's', body: 'b', lens: 'l', focalLength: 85, distance: 2000 } as never;
      const draft = { subject, scale: USUAL_SCALE, at: moment(5), conditions: unknownConditions(moment(0)), typed };
      const result = recordByHand(draft, { record: 'r', entry: 'e' });
      return result.ok ? `${JSON.stringify(result.value.record.finding)} ${result.value.entry?.value}` : result.fault.is;
    };
    expect([taken(3, null), taken(20, null), taken(21, null), taken(-20, null), taken(0.5, null)]).toMatchSnapshot('first');
    expect([2, 3, 8, 9, 1, -21].map((chosen) => taken(chosen, [8, 2]))).toMatchSnapshot('second');
    expect([taken(3, [3, 3]), taken(3, [3, 21])]).toMatchSnapshot('third');
  });
});

describe('whole logbooks', () => {
  const changed = { ...one, records: one.records.map((record, at) => (at % 3 ? record : { ...record, conditions: unknownConditions(moment(at)) })) };

  test('joined', () => {
    const torn = { ...one, records: one.records.map((record, at) => (at % 5 ? record : { ...record, finished: moment(at) })) };
    const joined = [merge(one, other), merge(one, changed), merge(changed, one), merge(torn, one), merge(one, torn), merge(one, one)];
    expect(
      joined.map(({ kit, records, byHand, entries, notes, proofs }) => [kit, records, byHand, entries, notes, proofs].map(fingerprint).join(' ')),
    ).toMatchSnapshot('first');
    expect(joined.map(({ records }) => records.map(({ id }) => id).join(' '))).toMatchSnapshot('second');
    const kits = [joinKits(one.kit, other.kit), joinKits(one.kit, one.kit), joinKits(merge(one, other).kit, one.kit), joinKits(one.kit, merge(one, other).kit)];
    expect(kits.map(({ kit, known }) => `${fingerprint(kit)} ${known}`)).toMatchSnapshot('third');
  });

  test('restored, first dry', () => {
    const plans = [planRestore(one, other, []), planRestore(one, changed, []), planRestore(changed, one, [])];
    expect(plans.map(({ counts, onlyHere, items }) => [JSON.stringify(counts), onlyHere, fingerprint(items)].join(' '))).toMatchSnapshot('first');
    expect([restored(one, other, 'replace') === other, isSame(restored(one, other, 'merge'), merge(one, other))]).toEqual([true, true]);
    const titles = titlesIn(one);
    const items = [...one.kit.bodies, ...one.kit.situations.slice(0, 4), ...one.records.slice(0, 2), ...one.notes.slice(0, 2), ...one.proofs.slice(0, 1)];
    expect(items.map((item) => `${JSON.stringify(titles(item))} ${toldAt(item)} ${fingerprintOf(coreOf(item))}`)).toMatchSnapshot('second');
    expect(JSON.stringify(titles({ ...one.kit.situations[0]!, body: 'gone', lens: 'gone' }))).toMatchSnapshot('third');
  });

  test('count their steps from one up', () => {
    const works = [merging(one, other), planningRestore(one, other, []), readingLibrary(one), comparing(one, other)];
    expect(works.map(stepsOf)).toMatchSnapshot();
  });

  test('as changes of keys', () => {
    const changes = changesBetween(one, { ...changed, notes: one.notes.slice(1) });
    expect(Object.entries(changes).map(([key, value]) => `${key} ${value === undefined}`).join(', ')).toMatchSnapshot(); // prettier-ignore
    expect(changesBetween(one, one)).toEqual({});
  });
});

describe('what is read', () => {
  test('of every version, and of none', () => {
    const versions = [0, 1, 1.5, 2, 3, 4, '3', undefined].map((version) => orThrown(() => presentVersion({ version, kit: { bodies: [] }, records: [] })));
    expect(sevenDigits([...versions, ...[null, [], 'text', 5].map((value) => orThrown(() => presentVersion(value)))])).toMatchSnapshot('first');
    const stored = [{}, { version: 1, kit: { bodies: [] } }, { version: 2 }, { version: 3 }, { version: 4 }, { version: 'x' }, { kit: 5 }];
    expect(stored.map((store) => orThrown(() => JSON.stringify(migrate(store))))).toMatchSnapshot('second');
    expect(migrate({ a: 1 }, [])).toEqual({ is: 'current' });
  });

  test('of damaged lists', () => {
    const body = libraryWith({}).kit.bodies[0]!;
    const note = { id: 'n', at: T0, of: 'b', what: 'service', note: '' };
    const stores = [{ version: 3 }, { version: 3, kit: { bodies: [body, 5, body, { ...body, id: 'c' }, { ...body, name: '' }] }, notes: 'none', entries: [null] }, { version: 3, kit: [], records: [], notes: [note, note, { ...note, id: 'm' }] }, null]; // prettier-ignore
    const read = stores.map((store) =>
      orThrown(() => {
        const result = readLibrary(store);
        if (!result.ok) return result.fault;
        const { library, setAside } = result.value;
        return [library.kit.bodies.length, library.notes.length, library.entries.length, JSON.stringify(setAside.map(({ why }) => why))].join(' ');
      }),
    );
    expect(read).toMatchSnapshot('first');
    expect(stores.map((store) => stepsOf(readingLibrary(store)))).toMatchSnapshot('second');
  });
});
