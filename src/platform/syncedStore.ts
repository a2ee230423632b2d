// storage.sync: what the browser itself carries between the computers of one account. Small, and without any promise of
// when; a fault is an error value.
import { DONE, failed, got, type Result } from '../result.ts';
import { browser } from './browser.ts';

export interface SyncedStore {
  /** Everything of this extension that is carried. */
  read(): Promise<Result<Record<string, unknown>>>;
  /** Each call counts as one of the 120 writes a browser allows in a minute. */
  write(entries: Readonly<Record<string, unknown>>): Promise<Result>;
  remove(keys: readonly string[]): Promise<Result>;
  /** Tells under which keys something was changed, here or on another computer. */
  onChange(listener: (keys: readonly string[]) => void): void;
}

export const syncedStore: SyncedStore = {
  async read() {
    try {
      return got(await browser.storage.sync.get(null));
    } catch {
      return failed(sentence);
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

const attempted = (action: Promise<void>): Promise<Result> =>
  action.then(
    () => DONE,
    () => failed(sentence),
  );

const sentence =
  'The browser’s sync takes nothing just now, so last values do not reach your other computers. Everything is kept here, ' +
  'and it is tried again while this panel is open.';
