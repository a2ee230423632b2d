// Contract of the taught words' store: what two windows add is all there, what cannot be read is left as it is, and the loss of either of the
// two places where they lie takes nothing.
import 'fake-indexeddb/auto';
import { clear, createStore, get, set } from 'idb-keyval';
import { beforeEach, expect, test, vi } from 'vitest';
import type { Take } from '../../src/voice/ownWords/take.ts';

const secondCopy = createStore('sweepbook-words', 'own');
const kept: Record<string, unknown> = {};
const written: string[] = [];

vi.stubGlobal('browser', {
  storage: {
    local: {
      getKeys: () => Promise.resolve(Object.keys(kept)),
      get: (keys: readonly string[]) => Promise.resolve(structuredClone(Object.fromEntries(keys.filter((key) => key in kept).map((key) => [key, kept[key]])))),
      set: async (entries: object) => {
        written.push(...Object.keys(entries));
        Object.assign(kept, structuredClone(entries));
      },
      remove: (keys: readonly string[]) => Promise.resolve(keys.forEach((key) => delete kept[key])),
    },
  },
});
let last: Promise<unknown> = Promise.resolve();
vi.stubGlobal('navigator', { locks: { request: (_: string, work: () => Promise<unknown>) => (last = last.then(work, work)) } });

const { takesIn } = await import('../../src/platform/takes.ts');

const wipe = (): void => Object.keys(kept).forEach((key) => delete kept[key]);
beforeEach(async () => {
  wipe();
  written.length = 0;
  await clear(secondCopy);
});

const takes = takesIn(() => 'en-US');
const take = (word: string): Take => ({ word, noise: Array.from({ length: 8 }, () => -100), frames: Array.from({ length: 64 }, () => -60) });
const learned: Take = { ...take('solid'), learned: true };
const add = (one: Take) => takes.change((now) => [...(now ?? []), one]);

test('what a lesson and a sweep add at the same time is all kept, and told apart', async () => {
  await Promise.all([add(take('solid')), add(learned)]);
  expect(await takes.read()).toEqual({ ok: true, value: [take('solid'), learned] });
});

test('takes that cannot be read are told and left, unless they are taught anew', async () => {
  await add(take('solid'));
  kept['words:en-US:solid'] = 'spoilt';
  expect(await takes.change((now) => now && [...now, learned])).toMatchObject({ ok: false, fault: 'not read' });
  expect(kept['words:en-US:solid']).toBe('spoilt');
  expect(await takes.change((now) => [...(now ?? []), take('undo')])).toEqual({ ok: true, value: [take('undo')] });
  expect(await takes.read()).toEqual({ ok: true, value: [take('undo')] });
});

test('the words of each language lie by themselves', async () => {
  const german = takesIn(() => 'de-DE');
  await takes.change(() => [take('solid')]);
  await german.change(() => [take('stabil')]);
  expect(await takes.all()).toMatchObject({ ok: true, value: [{ language: 'de-DE' }, { language: 'en-US' }] });
  expect(await german.erase()).toMatchObject({ ok: true });
  expect(await german.read()).toEqual({ ok: true, value: [] });
  expect(await takes.read()).toEqual({ ok: true, value: [take('solid')] });
});

test('either place may be lost: what is in the other comes back, and a change puts it into both', async () => {
  await takes.change(() => [take('solid'), take('undo')]);
  await clear(secondCopy);
  expect(await takes.read()).toEqual({ ok: true, value: [take('solid'), take('undo')] });
  await add(learned);
  wipe();
  const all = [take('solid'), learned, take('undo')];
  expect(await takes.read()).toMatchObject({ ok: true, value: expect.arrayContaining(all) });
  await add(take('late'));
  expect(Object.keys(kept).toSorted()).toEqual(['words:en-US:late', 'words:en-US:solid', 'words:en-US:undo']);
});

test('what an earlier version kept in IndexedDB alone is still there', async () => {
  await set('taught de-DE', { version: 1, language: 'de-DE', takes: [take('stabil')] }, secondCopy);
  expect(await takesIn(() => 'de-DE').read()).toEqual({ ok: true, value: [take('stabil')] });
  expect(await takes.all()).toMatchObject({ ok: true, value: [{ language: 'de-DE', takes: [take('stabil')] }] });
});

test('a word that is learned is written, and no other', async () => {
  await takes.change(() => [take('solid'), take('undo')]);
  written.length = 0;
  await add(learned);
  expect(written).toEqual(['words:en-US:solid']);
});

test('a word that is unlearned is gone from both places, the last one too', async () => {
  await takes.change(() => [take('solid'), take('undo')]);
  await takes.change((now) => now && now.filter(({ word }) => word === 'solid'));
  expect(await takes.read()).toEqual({ ok: true, value: [take('solid')] });
  await takes.change(() => []);
  expect(await takes.read()).toEqual({ ok: true, value: [] });
  expect(await takes.all()).toEqual({ ok: true, value: [] });
  wipe();
  expect(await takes.read()).toEqual({ ok: true, value: [] });
});

test('words are kept where IndexedDB takes nothing more', async () => {
  const broken = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new Error('full');
  });
  expect(await add(take('solid'))).toEqual({ ok: true, value: [take('solid')] });
  broken.mockRestore();
  expect(await get('taught', secondCopy)).toBeUndefined();
  expect(await takes.read()).toEqual({ ok: true, value: [take('solid')] });
});
