// Contract of reading the store: in parts where the browser gives its keys, told how far it is, and in the end as the store is
// then, whatever was written meanwhile; a part that is not answered in time is a fault.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

type Listener = (changes: Record<string, { newValue?: unknown }>) => void;

let kept: Record<string, unknown>;
let asked: (readonly string[] | null)[];
let listeners: Set<Listener>;
let beforeAnswer: () => void;

const write = (key: string, newValue: unknown): void => {
  if (newValue === undefined) delete kept[key];
  else kept[key] = newValue;
  for (const listener of listeners) listener({ [key]: newValue === undefined ? {} : { newValue } });
};

function browserWith(keys: object) {
  const local = {
    ...keys,
    get: async (wanted: readonly string[] | null) => {
      asked.push(wanted);
      await Promise.resolve();
      const found = Object.fromEntries((wanted ?? Object.keys(kept)).filter((key) => key in kept).map((key) => [key, kept[key]]));
      beforeAnswer();
      return found;
    },
    onChanged: { addListener: (one: Listener) => listeners.add(one), removeListener: (one: Listener) => listeners.delete(one) },
  };
  return { storage: { local } };
}

const withKeys = { getKeys: () => Promise.resolve(Object.keys(kept)) };

async function storeOf(browser: object) {
  vi.resetModules();
  vi.stubGlobal('browser', browser);
  return (await import('../../src/platform/storage.ts')).store;
}

beforeEach(() => {
  kept = Object.fromEntries(Array.from({ length: 600 }, (_, n) => [`record:${n}`, { n }]));
  asked = [];
  listeners = new Set();
  beforeAnswer = () => undefined;
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

test('many keys are read in parts, and it is told how far that is', async () => {
  const store = await storeOf(browserWith(withKeys));
  const told: number[] = [];
  const read = await store.read(({ done, of }) => void told.push(done / of));
  expect(read).toEqual({ ok: true, value: kept });
  expect(asked.length).toBeGreaterThan(1);
  expect(asked.flat()).toEqual(Object.keys(kept));
  expect(told).toEqual(told.toSorted((a, b) => a - b));
  expect(told.length).toBe(asked.length - 1);
  expect(listeners.size).toBe(0);
});

test('what is written and removed between the parts is as the store has it in the end', async () => {
  const store = await storeOf(browserWith(withKeys));
  beforeAnswer = () => {
    if (asked.length !== 2) return;
    write('record:0', { n: 'changed' });
    write('record:1', undefined);
    write('record:new', { n: 'new' });
  };
  const read = await store.read();
  expect(read).toEqual({ ok: true, value: kept });
  expect(read.ok && read.value['record:new']).toEqual({ n: 'new' });
});

test('a browser that gives no keys is asked for everything at once', async () => {
  const store = await storeOf(browserWith({}));
  expect(await store.read()).toEqual({ ok: true, value: kept });
  expect(asked).toEqual([null]);
});

test('a part that is not answered in time is a fault, and a large write may take longer than a small one', async () => {
  vi.useFakeTimers();
  const never = new Promise<never>(() => undefined);
  const silent = { storage: { local: { ...browserWith(withKeys).storage.local, get: () => never, set: () => never } } };
  const store = await storeOf(silent);
  const ends: string[] = [];
  void store.read().then(() => ends.push('read'));
  void store.write({ one: 1 }).then(() => ends.push('small write'));
  void store.write(kept).then(() => ends.push('large write'));
  await vi.advanceTimersByTimeAsync(4000);
  expect(ends.toSorted()).toEqual(['read', 'small write']);
  await vi.advanceTimersByTimeAsync(20_000);
  expect(ends).toContain('large write');
});
