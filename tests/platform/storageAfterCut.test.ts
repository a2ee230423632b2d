// Contract of the store where a write was cut off: filler is written before anything else, in Chromium alone, and a reading that fails once is
// tried again.
import { afterEach, expect, test, vi } from 'vitest';
import { FILLER } from '../../src/platform/tornEnd.ts';

afterEach(() => void vi.unstubAllGlobals());

/** The store of a page at this address; `damaged`: so many readings fail. */
async function storeAt(protocol: string, damaged = 0, kept: Record<string, unknown> = {}) {
  const asked: string[] = [];
  let left = damaged;
  const local = {
    get: () => {
      left -= 1;
      return left >= 0 ? Promise.reject(new Error('Invalid JSON')) : Promise.resolve({ ...kept });
    },
    set: (entries: object) => Promise.resolve(void asked.push(...Object.keys(entries))),
    remove: (keys: string | readonly string[]) => Promise.resolve(void asked.push(`without ${String(keys)}`)),
    onChanged: { addListener: () => undefined, removeListener: () => undefined },
  };
  vi.resetModules();
  vi.stubGlobal('location', { protocol });
  vi.stubGlobal('browser', { storage: { local } });
  const { store } = await import('../../src/platform/storage.ts');
  return { store, asked };
}

test('in Chromium filler comes before the first write, and not again; in Firefox there is none', async () => {
  const chromium = await storeAt('chrome-extension:');
  await chromium.store.write({ kit: 1 });
  await chromium.store.remove(['live']);
  expect(chromium.asked).toEqual([FILLER, `without ${FILLER}`, 'kit', 'without live']);
  const firefox = await storeAt('moz-extension:');
  await firefox.store.write({ kit: 1 });
  expect(firefox.asked).toEqual(['kit']);
});

test('a reading that fails is tried once more, and what fails then is told', async () => {
  const once = await storeAt('chrome-extension:', 1, { kit: 1, [FILLER]: ' ' });
  expect(await once.store.read()).toEqual({ ok: true, value: { kit: 1 } });
  const always = await storeAt('chrome-extension:', 9);
  expect(await always.store.read()).toEqual({ ok: false, fault: { is: 'not read', why: 'Invalid JSON' } });
});
