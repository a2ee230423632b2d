// The words the person taught, in IndexedDB, those of each language by themselves. They can be taught again, so nothing else depends on
// them; what does not fit the schema is told and left alone until it is taught anew.
import { createStore, del, get, update, values } from 'idb-keyval';
import * as v from 'valibot';
import { failed, got, type Result } from '../result.ts';
import { OwnWords, ownWordsOf, type Take } from '../voice/ownWords/take.ts';

export type TakesFault = 'not read' | 'not kept' | 'not erased';
type Kept = Result<readonly Take[], TakesFault>;

export interface Takes {
  read(): Promise<Kept>;
  /** Those of every language, in the order of their tags; languages without any are left out. */
  all(): Promise<Result<readonly OwnWords[], TakesFault>>;
  /**
   * Puts what `how` makes of the takes in their place, at once, whichever window asks; null stands for takes that cannot be
   * read, and leaves them. The answer is what is kept now. `tag`: of another language than the one in use.
   */
  change(how: (takes: readonly Take[] | null) => readonly Take[] | null, tag?: string): Promise<Kept>;
  /** Of this language. */
  erase(): Promise<Result<undefined, TakesFault>>;
}

const database = createStore('sweepbook-words', 'own');
/** Where the words of the first language that could be taught lie; every other has its tag behind it. */
const KEY = 'taught';
const keyOf = (tag: string): string => (tag === 'en-US' ? KEY : `${KEY} ${tag}`);

function readTakes(stored: unknown): readonly Take[] | null {
  if (stored === undefined) return [];
  const read = v.safeParse(OwnWords, stored);
  return read.success ? read.output.takes : null;
}

const told = (takes: readonly Take[] | null): Kept => (takes === null ? failed('not read') : got(takes));

/** `language`: the tag of the one in use. */
export const takesIn = (language: () => string): Takes => ({
  async read() {
    try {
      return told(readTakes(await get(keyOf(language()), database)));
    } catch {
      return failed('not read');
    }
  },
  async all() {
    try {
      const read = (await values<unknown>(database)).map((stored) => v.safeParse(OwnWords, stored));
      const found = read.flatMap(({ success, output }) => (success ? [output] : []));
      if (found.length < read.length) return failed('not read');
      return got(found.filter(({ takes }) => takes.length > 0).toSorted((a, b) => (a.language < b.language ? -1 : 1)));
    } catch {
      return failed('not read');
    }
  },
  async change(how, tag = language()) {
    try {
      let kept: readonly Take[] | null = null;
      await update<unknown>(
        keyOf(tag),
        (stored) => {
          kept = how(readTakes(stored));
          return kept === null ? stored : ownWordsOf(tag, kept);
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
      await del(keyOf(language()), database);
      return got(undefined);
    } catch {
      return failed('not erased');
    }
  },
});
