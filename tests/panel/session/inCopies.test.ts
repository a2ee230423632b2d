// Contract of changing every copy: only what changes is written, and the first that cannot be read or kept is told.
import { expect, test } from 'vitest';
import { inCopies } from '../../../src/panel/session/inCopies.ts';
import type { Snapshot, Snapshots } from '../../../src/platform/snapshots.ts';
import { failed, got } from '../../../src/result.ts';
import { moment } from '../../../src/units.ts';

const copyOf = (at: number, stored: Snapshot['stored']): Snapshot => ({ at: moment(at), why: 'daily', stored });

/** Copies of so many moments; `kept` notes what is written. */
function copiesOf(times: readonly number[], faults: { readonly times?: true; readonly read?: number; readonly keep?: number } = {}) {
  const kept: Snapshot[] = [];
  const snapshots: Snapshots = {
    times: () => Promise.resolve(faults.times ? failed('copies unread') : got(times.map(moment))),
    read: (at) => Promise.resolve(faults.read === at ? failed('copy unread') : got(copyOf(at, { version: 3, of: at }))),
    keep: (snapshot) => {
      if (faults.keep === snapshot.at) return Promise.resolve(failed('copy not kept'));
      kept.push(snapshot);
      return Promise.resolve(got(undefined));
    },
  };
  return { snapshots, kept };
}
const odd = (stored: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> =>
  Number(stored['of']) % 2 === 1 ? { ...stored, changed: true } : stored;

test('only copies that change are written, each whole', async () => {
  const { snapshots, kept } = copiesOf([3, 2, 1]);
  expect(await inCopies(snapshots, odd)).toBe('changed');
  expect(kept).toEqual([copyOf(3, { version: 3, of: 3, changed: true }), copyOf(1, { version: 3, of: 1, changed: true })]);
});

test('what cannot be read or kept ends it, and is told', async () => {
  expect(await inCopies(copiesOf([3], { times: true }).snapshots, odd)).toBe('copiesUnread');
  const unread = copiesOf([3, 2, 1], { read: 2 });
  expect([await inCopies(unread.snapshots, odd), unread.kept.length]).toEqual(['copyLeft', 1]);
  const full = copiesOf([3, 2, 1], { keep: 1 });
  expect([await inCopies(full.snapshots, odd), full.kept.length]).toEqual(['copyLeft', 1]);
});
