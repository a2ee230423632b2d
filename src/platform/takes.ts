// The words the person taught, in IndexedDB. They can be taught again, so nothing else depends on them; what does not fit
// the schema is told and left alone until it is taught anew.
import { clear, createStore, get, update } from 'idb-keyval';
import * as v from 'valibot';
import { failed, got, type Result } from '../result.ts';
import { OwnWords, ownWordsOf, type Take } from '../voice/ownWords/take.ts';
import { ENGLISH_TAG } from '../hearing/languages/en/words.ts';

export type TakesFault = 'not read' | 'not kept' | 'not erased';
type Kept = Result<readonly Take[], TakesFault>;

export interface Takes {
  read(): Promise<Kept>;
  /**
   * Puts what `how` makes of the takes in their place, at once, whichever window asks; null stands for takes that cannot be
   * read, and leaves them. The answer is what is kept now.
   */
  change(how: (takes: readonly Take[] | null) => readonly Take[] | null): Promise<Kept>;
  erase(): Promise<Result<undefined, TakesFault>>;
}

const database = createStore('sweepbook-words', 'own');
const KEY = 'taught';

function takesIn(stored: unknown): readonly Take[] | null {
  if (stored === undefined) return [];
  const read = v.safeParse(OwnWords, stored);
  return read.success ? read.output.takes : null;
}

const told = (takes: readonly Take[] | null): Kept => (takes === null ? failed('not read') : got(takes));

export const takes: Takes = {
  async read() {
    try {
      return told(takesIn(await get(KEY, database)));
    } catch {
      return failed('not read');
    }
  },
  async change(how) {
    try {
      let kept: readonly Take[] | null = null;
      await update<unknown>(
        KEY,
        (stored) => {
          kept = how(takesIn(stored));
          return kept === null ? stored : ownWordsOf(ENGLISH_TAG, kept);
        },
        database,
      );
      return told(kept);
    } catch {
      return failed('not kept');
    }
  },
  async erase() {
    try {
      await clear(database);
      return got(undefined);
    } catch {
      return failed('not erased');
    }
  },
};
