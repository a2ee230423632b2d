// Contract of the taught words' store: what two windows add is all there, and what cannot be read is left as it is.
import 'fake-indexeddb/auto';
import { clear, createStore, get, set } from 'idb-keyval';
import { beforeEach, expect, test } from 'vitest';
import { takesIn } from '../../src/platform/takes.ts';
import type { Take } from '../../src/voice/ownWords/take.ts';

const database = createStore('sweepbook-words', 'own');
beforeEach(() => clear(database));

const takes = takesIn(() => 'en-US');
const take = (word: string): Take => ({ word, noise: Array.from({ length: 8 }, () => -100), frames: Array.from({ length: 64 }, () => -60) });
const learned: Take = { ...take('solid'), learned: true };

test('what a lesson and a sweep add at the same time is all kept, and told apart', async () => {
  const add = (one: Take) => takes.change((now) => [...(now ?? []), one]);
  await Promise.all([add(take('solid')), add(learned)]);
  expect(await takes.read()).toEqual({ ok: true, value: [take('solid'), learned] });
});

test('takes that cannot be read are told and left, unless they are taught anew', async () => {
  await set('taught', 'spoilt', database);
  expect(await takes.change((now) => now && [...now, learned])).toMatchObject({ ok: false, fault: 'not read' });
  expect(await get('taught', database)).toBe('spoilt');
  expect(await takes.change((now) => [...(now ?? []), take('undo')])).toEqual({ ok: true, value: [take('undo')] });
});

test('the words of each language lie by themselves', async () => {
  const german = takesIn(() => 'de-DE');
  await takes.change(() => [take('solid')]);
  await german.change(() => [take('stabil')]);
  expect(await takes.read()).toEqual({ ok: true, value: [take('solid')] });
  expect(await german.erase()).toMatchObject({ ok: true });
  expect(await german.read()).toEqual({ ok: true, value: [] });
  expect(await takes.read()).toEqual({ ok: true, value: [take('solid')] });
});
