// Writes to disk, in order, and goes on trying when that fails: what could not be written stays here and is written with
// the next attempt. A newer value of a key takes the place of an older one that still waits.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { Store } from '../../platform/storage.ts';
import { got } from '../../result.ts';
import { words } from '../../words/catalogue.ts';
import type { Mishaps } from './troubles.ts';

export interface Keeper {
  /** Ends when the entries are on disk, or when it is known and told that they are not yet. `undefined` removes. */
  keep(entries: Readonly<Record<string, unknown>>): Promise<void>;
  /** When all that waits now is on disk; false when it is known and told that it is not yet. */
  written(): Promise<boolean>;
  /** The keys whose newest value is not on disk yet. */
  readonly unwritten: ReadonlySignal<ReadonlySet<string>>;
  /** Is a value of this key not on disk yet? */
  waitsFor(key: string): boolean;
  /** Forgets what waits under this key, because another panel writes it now. */
  forget(key: string): void;
}

const TRY_AGAIN_AFTER = 5000;
const TROUBLE = 'storage';

export function createKeeper(store: Store, troubles: Mishaps): Keeper {
  const waiting = new Map<string, unknown>();
  const unwritten = signal<ReadonlySet<string>>(new Set());
  let turn = Promise.resolve();
  let retry: ReturnType<typeof setTimeout> | undefined;

  async function write(): Promise<void> {
    const entries = [...waiting];
    if (entries.length === 0) return;
    const there = entries.filter(([, value]) => value !== undefined);
    const gone = entries.filter(([, value]) => value === undefined).map(([key]) => key);
    const written = there.length > 0 ? await store.write(Object.fromEntries(there)) : got(undefined);
    const removed = written.ok && gone.length > 0 ? await store.remove(gone) : written;
    if (removed.ok) {
      for (const [key, value] of entries) if (waiting.get(key) === value) waiting.delete(key);
      tell();
      troubles.clear(TROUBLE);
      return;
    }
    const say = words('store');
    troubles.add(TROUBLE, say.fault(removed.fault), { label: say.tryNow, run: () => void inTurn() });
    clearTimeout(retry);
    retry = setTimeout(() => void inTurn(), TRY_AGAIN_AFTER);
  }

  const inTurn = (): Promise<void> => (turn = turn.then(write));
  const tell = (): void => void (unwritten.value = new Set(waiting.keys()));

  /** What took the place of a value meanwhile has a turn of its own. */
  async function written(): Promise<boolean> {
    let before = new Map(waiting);
    while (before.size > 0) {
      await turn;
      const still = new Map([...waiting].filter(([key]) => before.has(key)));
      if ([...still].some(([key, value]) => before.get(key) === value)) return false;
      before = still;
    }
    return true;
  }

  return {
    keep(entries) {
      for (const [key, value] of Object.entries(entries)) waiting.set(key, value);
      tell();
      return inTurn();
    },
    written,
    unwritten,
    waitsFor: (key) => waiting.has(key),
    forget(key) {
      waiting.delete(key);
      tell();
    },
  };
}
