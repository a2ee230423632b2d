// Figures behind the permission for storage without a ceiling (docs/decisions/unlimited-storage.md): what a sweep takes on disk, and how many
// fit under the ceiling that a browser otherwise sets.
import { expect, test } from 'vitest';
import { recordKey, entryKey } from '../../src/logbook/keys.ts';
import { inPhase, later } from '../sweep/staged.ts';
import { libraryWith, sweepRecord, T0 } from './libraryWith.ts';

/** `chrome.storage.local.QUOTA_BYTES`: all keys, and all values as JSON. */
const CEILING = 10_485_760;
const ID = '3f0c2a9e-7a54-4a0b-9d3e-2a1b0c9d8e7f';

const { journal, holds } = inPhase('offered');
const whole = [...journal, { did: 'finished', at: later(900), by: 'key' }];
const { records, entries } = libraryWith({
  records: [sweepRecord(ID, T0, 6, 13, { journal: whole })],
  entries: [{ id: ID, value: 9, record: ID }],
});
/** A sweep with few holds, and the entry that rests on it. */
const onDisk = [recordKey(ID), records[0], entryKey(ID), entries[0]].reduce<number>((sum, part) => sum + JSON.stringify(part).length, 0);

test('a sweep of seven holds takes two to three kilobytes with its entry', () => {
  expect(holds).toHaveLength(7);
  expect(onDisk).toBeGreaterThan(2000);
  expect(onDisk).toBeLessThan(3000);
});

test('a ceiling would be reached with some four thousand sweeps, and 20,000 are four times too many', () => {
  const fit = Math.floor(CEILING / onDisk);
  expect(fit).toBeGreaterThan(4000);
  expect(fit).toBeLessThan(5000);
  expect((20_000 * onDisk) / CEILING).toBeGreaterThan(4);
});
