// Contract of the crops' store: what is kept comes back, what is erased does not, and what is not two crops is told and left.
import 'fake-indexeddb/auto';
import { clear, createStore, get, set } from 'idb-keyval';
import { beforeEach, expect, test } from 'vitest';
import { keptCrops } from '../../src/platform/keptCrops.ts';

const database = createStore('sweepbook-crops', 'pairs');
beforeEach(() => clear(database));

const shot = new Blob(['shot'], { type: 'image/png' });

test('two crops come back under their name, and under no other', async () => {
  expect(await keptCrops.keep('a', { reference: new Blob(['reference']), shot })).toMatchObject({ ok: true });
  const read = await keptCrops.read('a');
  expect(read.ok && (await read.value?.shot?.text())).toBe('shot');
  expect(read.ok && (await read.value?.reference?.text())).toBe('reference');
  expect(await keptCrops.read('b')).toEqual({ ok: true, value: null });
});

test('a picture without one focused in live view has one crop', async () => {
  await keptCrops.keep('one', { reference: null, shot });
  expect(await keptCrops.read('one')).toMatchObject({ ok: true, value: { reference: null } });
});

test('what is erased is gone, also a second time', async () => {
  await keptCrops.keep('a', { reference: null, shot });
  for (const _ of [1, 2]) expect(await keptCrops.erase('a')).toMatchObject({ ok: true });
  expect(await keptCrops.read('a')).toEqual({ ok: true, value: null });
});

test('what is not two crops is told, and left as it is', async () => {
  await set('spoilt', { reference: 'none', shot: 7 }, database);
  expect(await keptCrops.read('spoilt')).toEqual({ ok: false, fault: 'crops unread' });
  expect(await get('spoilt', database)).toEqual({ reference: 'none', shot: 7 });
});
