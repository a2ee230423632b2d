// Second copies of everything that is stored, in IndexedDB: the last ten. They can be rebuilt, so the database may be
// empty at any time; the next copy fills it again.
import { createStore, delMany, get, keys, set } from 'idb-keyval';
import * as v from 'valibot';
import { failed, got, type Result } from '../result.ts';
import { Moment } from '../storedUnits.ts';

const KEPT = 10;

const Snapshot = v.object({
  at: Moment,
  why: v.picklist(['daily', 'before a migration', 'before an import']),
  /** Everything, as it lay in the store. */
  stored: v.custom<Readonly<Record<string, unknown>>>((value) => typeof value === 'object' && value !== null),
});
export type Snapshot = v.InferOutput<typeof Snapshot>;

/** The list of them cannot be read, one of them failed, or one cannot be kept. */
export type CopyFault = 'copies unread' | 'copy unread' | 'copy not kept';

export interface Snapshots {
  /** When each was taken, newest first. */
  times(): Promise<Result<readonly Moment[], CopyFault>>;
  read(at: Moment): Promise<Result<Snapshot, CopyFault>>;
  /** Keeps this one and drops all but the last ten. */
  keep(snapshot: Snapshot): Promise<Result<void, CopyFault>>;
}

const database = createStore('sweepbook', 'snapshots');

const times = async (): Promise<Moment[]> => (await keys(database)).filter((key): key is Moment => v.safeParse(Moment, key).success).sort((a, b) => b - a);

export const snapshots: Snapshots = {
  async times() {
    try {
      return got(await times());
    } catch {
      return failed('copies unread');
    }
  },
  async read(at) {
    try {
      const result = v.safeParse(Snapshot, await get(at, database));
      return result.success ? got(result.output) : failed('copy unread');
    } catch {
      return failed('copy unread');
    }
  },
  async keep(snapshot) {
    try {
      await set(snapshot.at, snapshot, database);
      await delMany((await times()).slice(KEPT), database);
      return got(undefined);
    } catch {
      return failed('copy not kept');
    }
  },
};
