// storage.sync: what the browser itself carries between the computers of one account. Small, and without any promise of
// when; a fault is an error value.
import { failed, got, type Result } from '../result.ts';
import { browser } from './browser.ts';

/** The browser's sync takes and gives nothing just now. */
export type SyncFault = 'no sync';

export interface SyncedStore {
  /** Everything of this extension that is carried. */
  read(): Promise<Result<Record<string, unknown>, SyncFault>>;
  /** Each call counts as one of the 120 writes a browser allows in a minute. */
  write(entries: Readonly<Record<string, unknown>>): Promise<Result<void, SyncFault>>;
  remove(keys: readonly string[]): Promise<Result<void, SyncFault>>;
  /** Tells under which keys something was changed, here or on another computer. */
  onChange(listener: (keys: readonly string[]) => void): void;
}

export const syncedStore: SyncedStore = {
  async read() {
    try {
      return got(await browser.storage.sync.get(null));
    } catch {
      return failed('no sync');
    }
  },
  write: (entries) => attempted(browser.storage.sync.set({ ...entries })),
  remove: (keys) => attempted(browser.storage.sync.remove([...keys])),
  onChange(listener) {
    browser.storage.onChanged.addListener((changes, area) => {
      if (area === 'sync') listener(Object.keys(changes));
    });
  },
};

const attempted = (action: Promise<void>): Promise<Result<void, SyncFault>> =>
  action.then(
    () => got(undefined),
    () => failed('no sync'),
  );
