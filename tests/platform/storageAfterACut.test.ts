// Contract of the store where a write was cut off: what is damaged fails one reading and no more, filler is never seen, and nothing is
// written before it.
import { beforeEach, expect, test, vi } from 'vitest';
import type * as Storage from '../../src/platform/storage.ts';
import { FILLER } from '../../src/platform/tornEnd.ts';

const asked: string[] = [];
let kept: Record<string, unknown> = {};
/** So many readings fail. */
let damaged = 0;

vi.mock('../../src/platform/browser.ts', () => ({
  browser: {
    storage: {
      local: {
        onChanged: { addListener: () => undefined, removeListener: () => undefined },
        get: () => {
          damaged -= 1;
          return damaged >= 0 ? Promise.reject(new Error('Invalid JSON')) : Promise.resolve(kept);
        },
        set: (entries: object) => Promise.resolve(void asked.push(...Object.keys(entries))),
        remove: (keys: string | readonly string[]) => Promise.resolve(void asked.push(`without ${String(keys)}`)),
      },
    },
  },
}));

let store: typeof Storage.store;
beforeEach(async () => {
  asked.length = 0;
  kept = {};
  damaged = 0;
  vi.resetModules();
  ({ store } = await import('../../src/platform/storage.ts'));
});

test('a reading that fails is tried once more, and what fails then is told', async () => {
  kept = { kit: 1 };
  damaged = 1;
  expect(await store.read()).toEqual({ ok: true, value: { kit: 1 } });
  damaged = 2;
  expect(await store.read()).toEqual({ ok: false, fault: { is: 'not read', why: 'Invalid JSON' } });
});

test('filler that a cut has left is not part of what is stored', async () => {
  kept = { kit: 1, [FILLER]: ' ' };
  expect(await store.read()).toEqual({ ok: true, value: { kit: 1 } });
});

test('filler comes before the first write, and not again', async () => {
  await store.write({ kit: 1 });
  await store.remove(['live']);
  expect(asked).toEqual([FILLER, `without ${FILLER}`, 'kit', 'without live']);
});
