// storage.local: the truth of everything that must not be lost. A write counts only when the browser has acknowledged it;
// one that fails, or is not answered in time, is an error value.
import { DONE, failed, got, type Result } from '../result.ts';
import { browser } from './browser.ts';

/** A write that takes longer than this is treated as failed; it may still arrive. */
const ANSWER_WITHIN = 3000;

export interface Store {
  /** Everything, as it lies there. */
  read(): Promise<Result<Record<string, unknown>>>;
  /** Writes all entries or reports why not. */
  write(entries: Readonly<Record<string, unknown>>): Promise<Result>;
  remove(keys: readonly string[]): Promise<Result>;
  /** Tells what any window of the extension has changed, this one included; `undefined` stands for removed. */
  onChange(listener: (changes: Readonly<Record<string, unknown>>) => void): void;
}

export const store: Store = {
  async read() {
    try {
      return got(await answered(browser.storage.local.get(null)));
    } catch (error) {
      return failed(`What is stored cannot be read (${reasonOf(error)}). Close this panel and open it again.`);
    }
  },
  write: (entries) => attempted(() => browser.storage.local.set({ ...entries })),
  remove: (keys) => attempted(() => browser.storage.local.remove([...keys])),
  onChange(listener) {
    browser.storage.local.onChanged.addListener((changes) =>
      listener(Object.fromEntries(Object.entries(changes).map(([key, { newValue }]) => [key, newValue]))),
    );
  },
};

async function attempted(action: () => Promise<void>): Promise<Result> {
  try {
    await answered(action());
    return DONE;
  } catch (error) {
    return failed(
      `Nothing can be saved just now (${reasonOf(error)}). Leave this panel open and free some space on the disk: ` +
        'everything is kept here and is saved as soon as that works.',
    );
  }
}

function answered<T>(promise: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('no answer')), ANSWER_WITHIN);
    promise.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}

const reasonOf = (error: unknown): string => (error instanceof Error ? error.message.replace(/[.\s]+$/, '') : String(error));
