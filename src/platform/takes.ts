// The words the person taught, in IndexedDB. They can be taught again, so nothing else depends on them; what does not fit
// the schema is told and left alone until it is taught anew.
import { clear, createStore, get, set } from 'idb-keyval';
import * as v from 'valibot';
import { DONE, failed, got, type Got, type Result } from '../result.ts';
import { OwnWords, ownWordsOf, type Take } from '../voice/ownWords/take.ts';
import { LANGUAGE } from '../voice/vocabulary/en.ts';

export interface Takes {
  read(): Promise<Got<readonly Take[]>>;
  write(takes: readonly Take[]): Promise<Result>;
  erase(): Promise<Result>;
}

const database = createStore('sweepbook-words', 'own');
const KEY = 'taught';
const UNREADABLE = 'The words you taught cannot be read. Teach them again on the hearing check page; everything else is untouched.';
const NOT_KEPT = 'What you taught cannot be kept. Free some space on the disk and say the word again.';

export const takes: Takes = {
  async read() {
    try {
      const stored: unknown = await get(KEY, database);
      if (stored === undefined) return got([]);
      const result = v.safeParse(OwnWords, stored);
      return result.success ? got(result.output.takes) : failed(UNREADABLE);
    } catch {
      return failed(UNREADABLE);
    }
  },
  async write(all) {
    try {
      await set(KEY, ownWordsOf(LANGUAGE, all), database);
      return DONE;
    } catch {
      return failed(NOT_KEPT);
    }
  },
  async erase() {
    try {
      await clear(database);
      return DONE;
    } catch {
      return failed('The words you taught cannot be erased just now. Try it again.');
    }
  },
};
