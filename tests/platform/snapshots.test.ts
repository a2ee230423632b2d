// Contract of the copies: the last ten, newest first, and an empty or spoilt database is no fault of the store.
import 'fake-indexeddb/auto';
import { clear, createStore, set } from 'idb-keyval';
import { beforeEach, expect, test } from 'vitest';
import { snapshots } from '../../src/platform/snapshots.ts';
import { moment } from '../../src/units.ts';

const database = createStore('sweepbook', 'snapshots');
beforeEach(() => clear(database));

const day = (count: number) => moment(1_000_000 + count * 86_400_000);

test('an empty database has no copies, and the first one that is kept is read back', async () => {
  expect(await snapshots.times()).toEqual({ ok: true, value: [] });
  expect(await snapshots.keep({ at: day(0), why: 'daily', stored: { kit: { bodies: [] } } })).toEqual({ ok: true });
  expect(await snapshots.read(day(0))).toMatchObject({ ok: true, value: { stored: { kit: { bodies: [] } } } });
});

test('the last ten are kept, newest first', async () => {
  for (let count = 1; count <= 12; count++) await snapshots.keep({ at: day(count), why: 'daily', stored: {} });
  expect(await snapshots.times()).toEqual({ ok: true, value: [12, 11, 10, 9, 8, 7, 6, 5, 4, 3].map(day) });
});

test('a copy that does not fit, or is gone, is a fault', async () => {
  await set(day(20), { half: 'a copy' }, database);
  for (const at of [day(20), day(99)]) expect(await snapshots.read(at)).toEqual({ ok: false, fault: 'copy unread' });
});
