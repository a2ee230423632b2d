// The crops kept beside what photographs showed, in IndexedDB: pictures are no part of the logbook. They may be erased or lost, and
// the figures stand without them. They stay in this browser and are in no backup.
import { createStore, del, get, set } from 'idb-keyval';
import * as v from 'valibot';
import { failed, got, type Result } from '../result.ts';

/** Null where there was none. */
const CropPair = v.object({ reference: v.nullable(v.instance(Blob)), shot: v.nullable(v.instance(Blob)) });
/** Of the shot focused in live view, and of one with autofocus. */
export type CropPair = v.InferOutput<typeof CropPair>;

export type CropFault = 'crops unread' | 'crops not kept' | 'crops not erased';

export interface KeptCrops {
  /** Null where there are none under this name, or no longer. */
  read(name: string): Promise<Result<CropPair | null, CropFault>>;
  keep(name: string, crops: CropPair): Promise<Result<undefined, CropFault>>;
  erase(name: string): Promise<Result<undefined, CropFault>>;
}

const database = createStore('sweepbook-crops', 'pairs');

export const keptCrops: KeptCrops = {
  async read(name) {
    try {
      const stored: unknown = await get(name, database);
      if (stored === undefined) return got(null);
      const read = v.safeParse(CropPair, stored);
      return read.success ? got(read.output) : failed('crops unread');
    } catch {
      return failed('crops unread');
    }
  },
  async keep(name, { reference, shot }) {
    try {
      await set(name, { reference, shot }, database);
      return got(undefined);
    } catch {
      return failed('crops not kept');
    }
  },
  async erase(name) {
    try {
      await del(name, database);
      return got(undefined);
    } catch {
      return failed('crops not erased');
    }
  },
};
