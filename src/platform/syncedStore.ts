// storage.sync: what the browser itself carries between the computers of one account. Small, and without any promise of
// when; a fault is an error value.
import { answered, cannot, type Answer } from '../result.ts';
import { browser } from './browser.ts';

/** The browser's sync takes and gives nothing just now. */
export type SyncFault = 'no sync';

export interface SyncedStore {
  /** Everything of this extension that is carried. */
  read(): Promise<Answer<Record<string, unknown>, SyncFault>>;
  /** Each call counts as one of the 120 writes a browser allows in a minute. */
  write(entries: Readonly<Record<string, unknown>>): Promise<Answer<void, SyncFault>>;
  remove(keys: readonly string[]): Promise<Answer<void, SyncFault>>;
  /** Tells under which keys something was changed, here or on another computer. */
  onChange(listener: (keys: readonly string[]) => void): void;
}

export const syncedStore: SyncedStore = {
  async read() {
    try {
      return answered(await browser.storage.sync.get(null));
    } catch {
      return cannot('no sync');
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

const attempted = (action: Promise<void>): Promise<Answer<void, SyncFault>> =>
  action.then(
    () => answered(undefined),
    () => cannot('no sync'),
  );
