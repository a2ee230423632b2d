// storage.local: the truth of everything that must not be lost. A write counts only when the browser has acknowledged it;
// one that fails, or is not answered in time, is an error value.
import { failed, got, type Result } from '../result.ts';
import type { HowFar } from '../stepwise.ts';
import { browser } from './browser.ts';
import { FILLER, pastTornEnd } from './tornEnd.ts';

/** Milliseconds: a write that takes longer is treated as failed; it may still arrive. A large one may take so much more for each key. */
const ANSWER_WITHIN = 3000;
const FOR_EACH_KEY = 20;
/** Keys that are read at a time: a few frames' work. */
const PART = 250;
/** Where a browser cannot read in parts, all of it. */
const ALL_WITHIN = 120_000;

/** Keys that begin so are no part of the logbook: the words a person taught (`takes.ts`). */
export const TAUGHT_WORDS = 'words:';

/** `why`: what the browser says of it; null where it has not answered in time. */
export interface StoreFault {
  readonly is: 'not read' | 'not written';
  readonly why: string | null;
}

export interface Store {
  /** All of the logbook, as it lies there when it has been read; `tell` is told how far that is. */
  read(tell?: (far: HowFar) => void): Promise<Result<Record<string, unknown>, StoreFault>>;
  /** What lies under these keys. */
  readSome(keys: readonly string[]): Promise<Result<Record<string, unknown>, StoreFault>>;
  /** Writes all entries or reports why not. */
  write(entries: Readonly<Record<string, unknown>>): Promise<Result<undefined, StoreFault>>;
  remove(keys: readonly string[]): Promise<Result<undefined, StoreFault>>;
  /** Tells what any window of the extension has changed in the logbook, this one included; `undefined` stands for removed. */
  onChange(listener: (changes: Readonly<Record<string, unknown>>) => void): void;
}

let past: Promise<void> | null = null;
/** Before the first write: nothing may be acknowledged that lies behind a torn end. */
const readyToWrite = (): Promise<void> => (past ??= hasLog() ? pastTornEnd(browser.storage.local, browser.storage.session) : Promise.resolve());

/** Chromium's store is a log; Firefox's is a database that takes a torn write back by itself. */
const hasLog = (): boolean => globalThis.location?.protocol === 'chrome-extension:';

/** What is damaged behind a torn end fails the first reading, which throws it away: the second gives all the rest. */
const twice = <Found>(read: () => Promise<Found>): Promise<Found> => read().catch(read);

export const store: Store = {
  async read(tell = () => undefined) {
    const meanwhile = new Map<string, unknown>();
    const note: Parameters<typeof browser.storage.local.onChanged.addListener>[0] = (changes) => {
      for (const [key, { newValue }] of Object.entries(changes)) meanwhile.set(key, newValue);
    };
    browser.storage.local.onChanged.addListener(note);
    try {
      const read = await inParts(tell);
      for (const [key, value] of meanwhile) {
        if (value === undefined) delete read[key];
        else read[key] = value;
      }
      return got(ofLogbook(Object.entries(read)));
    } catch (error) {
      return failed({ is: 'not read', why: reasonOf(error) });
    } finally {
      browser.storage.local.onChanged.removeListener(note);
    }
  },
  async readSome(keys) {
    try {
      return got(await inTime(twice(() => browser.storage.local.get([...keys]))));
    } catch (error) {
      return failed({ is: 'not read', why: reasonOf(error) });
    }
  },
  write: (entries) => attempted(Object.keys(entries).length, () => readyToWrite().then(() => browser.storage.local.set({ ...entries }))),
  remove: (keys) => attempted(keys.length, () => readyToWrite().then(() => browser.storage.local.remove([...keys]))),
  onChange(listener) {
    browser.storage.local.onChanged.addListener((changes) => {
      const changed = ofLogbook(Object.entries(changes).map(([key, { newValue }]) => [key, newValue]));
      if (Object.keys(changed).length > 0) listener(changed);
    });
  },
};

const isOfLogbook = (key: string): boolean => key !== FILLER && !key.startsWith(TAUGHT_WORDS);
const ofLogbook = (entries: readonly (readonly [string, unknown])[]): Record<string, unknown> =>
  Object.fromEntries(entries.filter(([key]) => isOfLogbook(key)));

/** Not all browsers give the keys without what lies under them. */
interface WithKeys {
  readonly getKeys?: () => Promise<string[]>;
}

/** The keys that begin so, whether of the logbook or not. */
export async function keysUnder(prefix: string): Promise<Result<readonly string[], StoreFault>> {
  try {
    const keys = (await givenKeys()) ?? Object.keys(await everything());
    return got(keys.filter((key) => key.startsWith(prefix)));
  } catch (error) {
    return failed({ is: 'not read', why: reasonOf(error) });
  }
}

const givenKeys = (): Promise<string[] | null> => inTime(twice(() => (browser.storage.local as WithKeys).getKeys?.() ?? Promise.resolve(null)));
const everything = (): Promise<Record<string, unknown>> =>
  inTime(
    twice(() => browser.storage.local.get(null)),
    ALL_WITHIN,
  );

/** In parts: thousands of records at once would let nothing else happen for seconds. */
async function inParts(tell: (far: HowFar) => void): Promise<Record<string, unknown>> {
  const keys = (await givenKeys())?.filter(isOfLogbook);
  if (!keys) return everything();
  const read: Record<string, unknown> = {};
  const ask = async (from: number): Promise<Record<string, unknown>> =>
    from < keys.length ? inTime(twice(() => browser.storage.local.get(keys.slice(from, from + PART)))) : {};
  // The browser fetches the next part while this one is taken in.
  let next = ask(0);
  for (let done = 0; done < keys.length; done += PART) {
    if (done > 0) tell({ done, of: keys.length });
    const [part, following]: [Record<string, unknown>, typeof next] = [await next, ask(done + PART)];
    next = following;
    Object.assign(read, part);
  }
  return read;
}

async function attempted(keys: number, action: () => Promise<void>): Promise<Result<undefined, StoreFault>> {
  try {
    await inTime(action(), ANSWER_WITHIN + FOR_EACH_KEY * keys);
    return got(undefined);
  } catch (error) {
    return failed({ is: 'not written', why: reasonOf(error) });
  }
}

const LATE = new Error('no answer');

function inTime<T>(promise: Promise<T>, within = ANSWER_WITHIN): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(LATE), within);
    promise.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}

function reasonOf(error: unknown): string | null {
  if (error === LATE) return null;
  return error instanceof Error ? error.message.replace(/[.\s]+$/, '') : String(error);
}
