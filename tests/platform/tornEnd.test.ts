// Contract of the filler behind a torn end: longer than a block, gone again, once in a run of the browser, and never in the way.
import { expect, test } from 'vitest';
import { FILLER, pastTornEnd } from '../../src/platform/tornEnd.ts';

/** An area that notes what it is asked to write. */
function area(fails = false) {
  const kept: Record<string, unknown> = {};
  const did: string[] = [];
  return {
    kept,
    did,
    get: (key: string) => Promise.resolve(key in kept ? { [key]: kept[key] } : {}),
    set(entries: Record<string, unknown>) {
      if (fails) return Promise.reject(new Error('full'));
      did.push(...Object.entries(entries).map(([key, value]) => `${key} ${String(value).length > 32_768 ? 'long' : String(value)}`));
      Object.assign(kept, entries);
      return Promise.resolve();
    },
    remove(key: string) {
      did.push(`without ${key}`);
      delete kept[key];
      return Promise.resolve();
    },
  };
}

test('filler longer than a block is written and removed, once in a run of the browser', async () => {
  const [local, run] = [area(), area()];
  await pastTornEnd(local, run);
  await pastTornEnd(local, run);
  expect([local.did, local.kept]).toEqual([[`${FILLER} long`, `without ${FILLER}`], {}]);
  await pastTornEnd(local, area());
  expect(local.did).toHaveLength(4);
});

test('a browser that keeps nothing for a run has it done each time', async () => {
  const local = area();
  await pastTornEnd(local, undefined);
  await pastTornEnd(local, undefined);
  expect(local.did).toHaveLength(4);
});

test('where there is no room it is left, and tried again next time', async () => {
  const run = area();
  await expect(pastTornEnd(area(true), run)).resolves.toBeUndefined();
  expect(run.did).toEqual([]);
});
