// The words the person taught, in IndexedDB. They can be taught again, so nothing else depends on them; what does not fit
// the schema is told and left alone until it is taught anew.
import { clear, createStore, get, update } from 'idb-keyval';
import * as v from 'valibot';
import { DONE, failed, got, type Result } from '../result.ts';
import { OwnWords, ownWordsOf, type Take } from '../voice/ownWords/take.ts';
import { LANGUAGE } from '../voice/vocabulary/en.ts';

export interface Takes {
  read(): Promise<Result<readonly Take[]>>;
  /**
   * Puts what `how` makes of the takes in their place, at once, whichever window asks; null stands for takes that cannot be
   * read, and leaves them. The answer is what is kept now.
   */
  change(how: (takes: readonly Take[] | null) => readonly Take[] | null): Promise<Result<readonly Take[]>>;
  erase(): Promise<Result>;
}

const database = createStore('sweepbook-words', 'own');
const KEY = 'taught';
const UNREADABLE = 'The words you taught cannot be read. Teach them again on the hearing check page; everything else is untouched.';
const NOT_KEPT = 'What you taught cannot be kept. Free some space on the disk and say the word again.';

function takesIn(stored: unknown): readonly Take[] | null {
  if (stored === undefined) return [];
  const read = v.safeParse(OwnWords, stored);
  return read.success ? read.output.takes : null;
}

const told = (takes: readonly Take[] | null): Result<readonly Take[]> => (takes === null ? failed(UNREADABLE) : got(takes));

export const takes: Takes = {
  async read() {
    try {
      return told(takesIn(await get(KEY, database)));
    } catch {
      return failed(UNREADABLE);
    }
  },
  async change(how) {
    try {
      let kept: readonly Take[] | null = null;
      await update<unknown>(
        KEY,
        (stored) => {
          kept = how(takesIn(stored));
          return kept === null ? stored : ownWordsOf(LANGUAGE, kept);
        },
        database,
      );
      return told(kept);
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
