// storage.local: the truth of everything that must not be lost. A write counts only when the browser has acknowledged it;
// one that fails, or is not answered in time, is an error value.
import { failed, got, type Result } from '../result.ts';
import { browser } from './browser.ts';
import { FILLER, pastTornEnd } from './tornEnd.ts';

/** A write that takes longer than this is treated as failed; it may still arrive. */
const ANSWER_WITHIN = 3000;

/** `why`: what the browser says of it; null where it has not answered in time. */
export interface StoreFault {
  readonly is: 'not read' | 'not written';
  readonly why: string | null;
}

export interface Store {
  /** Everything, as it lies there. */
  read(): Promise<Result<Record<string, unknown>, StoreFault>>;
  /** Writes all entries or reports why not. */
  write(entries: Readonly<Record<string, unknown>>): Promise<Result<undefined, StoreFault>>;
  remove(keys: readonly string[]): Promise<Result<undefined, StoreFault>>;
  /** Tells what any window of the extension has changed, this one included; `undefined` stands for removed. */
  onChange(listener: (changes: Readonly<Record<string, unknown>>) => void): void;
}

let past: Promise<void> | null = null;
/** Before the first write: nothing may be acknowledged that lies behind a torn end. */
const readyToWrite = (): Promise<void> => (past ??= pastTornEnd(browser.storage.local, browser.storage.session));

/** What is damaged behind a torn end fails the first reading, which throws it away: the second gives all the rest. */
const everything = (): Promise<Record<string, unknown>> => browser.storage.local.get(null).catch(() => browser.storage.local.get(null));

export const store: Store = {
  async read() {
    try {
      const { [FILLER]: _left, ...stored } = await inTime(everything());
      return got(stored);
    } catch (error) {
      return failed({ is: 'not read', why: reasonOf(error) });
    }
  },
  write: (entries) => attempted(() => readyToWrite().then(() => browser.storage.local.set({ ...entries }))),
  remove: (keys) => attempted(() => readyToWrite().then(() => browser.storage.local.remove([...keys]))),
  onChange(listener) {
    browser.storage.local.onChanged.addListener((changes) =>
      listener(Object.fromEntries(Object.entries(changes).map(([key, { newValue }]) => [key, newValue]))),
    );
  },
};

async function attempted(action: () => Promise<void>): Promise<Result<undefined, StoreFault>> {
  try {
    await inTime(action());
    return got(undefined);
  } catch (error) {
    return failed({ is: 'not written', why: reasonOf(error) });
  }
}

const LATE = new Error('no answer');

function inTime<T>(promise: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(LATE), ANSWER_WITHIN);
    promise.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}

function reasonOf(error: unknown): string | null {
  if (error === LATE) return null;
  return error instanceof Error ? error.message.replace(/[.\s]+$/, '') : String(error);
}
