// Everything the extension keeps, read where it lies: what a power cut may not have taken.

interface Copy {
  readonly at: number;
  readonly why: string;
  /** Of everything in it. */
  readonly keys: readonly string[];
}

export interface Kept {
  readonly local: Readonly<Record<string, unknown>>;
  readonly synced: Readonly<Record<string, unknown>>;
  /** Newest first. */
  readonly copies: readonly Copy[];
  /** The word of each take. */
  readonly taught: readonly string[];
  /** The names of the pairs of crops that hold something. */
  readonly crops: readonly string[];
}

/** Runs in a page of the extension. A database that is not there yet is not made. */
export async function readKept(): Promise<Kept> {
  const { local, sync } = ((globalThis as { browser?: typeof chrome }).browser ?? chrome).storage;
  const [copies, words, pairs] = await Promise.all([all('sweepbook', 'snapshots'), all('sweepbook-words', 'own'), all('sweepbook-crops', 'pairs')]);
  const text = (value: unknown): string => (typeof value === 'string' ? value : '');
  const lying = await local.get(null);
  const inPlace = Object.entries(lying).filter(([key]) => key.startsWith('words:'));
  return {
    local: lying,
    synced: await sync.get(null),
    copies: copies
      .map(([at, copy]) => {
        const { why, stored } = copy as { why: string; stored: object };
        return { at: Number(at), why, keys: Object.keys(stored) };
      })
      .sort((a, b) => b.at - a.at),
    taught: (inPlace.length > 0 ? inPlace : words).flatMap(([, own]) => (own as { takes: { word: string }[] }).takes.map(({ word }) => word)),
    crops: pairs.flatMap(([name, pair]) => (Object.values(pair as object).some((crop) => crop instanceof Blob && crop.size > 0) ? [text(name)] : [])),
  };

  async function all(name: string, store: string): Promise<[unknown, unknown][]> {
    const database = await opened(name);
    if (!database) return [];
    try {
      if (!database.objectStoreNames.contains(store)) return [];
      const objects = database.transaction(store).objectStore(store);
      const [keys, values] = await Promise.all([answered(objects.getAllKeys()), answered(objects.getAll())]);
      return keys.map((key, at) => [key, values[at]]);
    } finally {
      database.close();
    }
  }

  /** Null where there is none, or none that is finished: the list of all fails in Firefox where one was cut off while it was made. */
  function opened(name: string): Promise<IDBDatabase | null> {
    return new Promise((done, failed) => {
      const asked = indexedDB.open(name);
      let isNew = false;
      asked.addEventListener('upgradeneeded', () => {
        isNew = true;
        asked.transaction?.abort();
      });
      asked.addEventListener('success', () => done(asked.result));
      asked.addEventListener('error', () => (isNew ? done(null) : failed(asked.error ?? new Error('no answer'))));
    });
  }

  function answered<Answer>(asked: IDBRequest<Answer>): Promise<Answer> {
    return new Promise((done, failed) => {
      asked.addEventListener('success', () => done(asked.result));
      asked.addEventListener('error', () => failed(asked.error ?? new Error('no answer')));
    });
  }
}

/** Runs in a page of the extension: all that lies in the copy of this moment. */
export function readCopy(at: number): Promise<Record<string, unknown>> {
  return new Promise((done, failed) => {
    const asked = indexedDB.open('sweepbook');
    asked.addEventListener('error', () => failed(new Error('no copies')));
    asked.addEventListener('success', () => {
      const read: IDBRequest<{ stored: Record<string, unknown> }> = asked.result.transaction('snapshots').objectStore('snapshots').get(at);
      read.addEventListener('error', () => failed(new Error('no copy')));
      read.addEventListener('success', () => {
        asked.result.close();
        done(read.result.stored);
      });
    });
  });
}

/** What lies in the store under keys that begin so. */
export const under = <Item>({ local }: Pick<Kept, 'local'>, prefix: string): readonly Item[] =>
  Object.entries(local).flatMap(([key, item]) => (key.startsWith(prefix) ? [item as Item] : []));
