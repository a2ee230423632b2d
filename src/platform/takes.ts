// The words the person taught, those of each language by themselves: in storage.local, one key for each word, so that little is written when
// one is learned; and as a second copy in IndexedDB. Nothing in the logbook depends on them. What does not fit the schema is told and left
// alone until it is taught anew.
import { createStore, del, get, keys, set } from 'idb-keyval';
import * as v from 'valibot';
import { failed, got, type Result } from '../result.ts';
import { OwnWords, ownWordsOf, type Take } from '../voice/ownWords/take.ts';
import { keysUnder, store, TAUGHT_WORDS, type StoreFault } from './storage.ts';

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

/** One window at a time changes them. */
const LOCK = 'sweepbook words';

const keyOf = (tag: string, word = ''): string => `${TAUGHT_WORDS}${tag}:${word}`;
const tagOf = (key: string): string => key.slice(TAUGHT_WORDS.length).split(':', 1)[0] ?? '';

const secondCopy = createStore('sweepbook-words', 'own');
/** Where the words of the first language that could be taught have theirs; every other has its tag behind it. */
const COPY = 'taught';
const copyOf = (tag: string): string => (tag === 'en-US' ? COPY : `${COPY} ${tag}`);
const tagOfCopy = (key: string): string => key.slice(COPY.length + 1) || 'en-US';

/** `language`: the tag of the one in use. */
export const takesIn = (language: () => string): Takes => ({
  async read() {
    try {
      return told((await lying(language())).takes);
    } catch {
      return failed('not read');
    }
  },
  async all() {
    try {
      const copied = await keys<string>(secondCopy);
      const tags = [...new Set([...demanded(await keysUnder(TAUGHT_WORDS)).map(tagOf), ...copied.map(tagOfCopy)])].toSorted();
      const all = await Promise.all(tags.map(async (tag) => ({ tag, takes: (await lying(tag)).takes })));
      if (all.some(({ takes }) => takes === null)) return failed('not read');
      return got(all.flatMap(({ tag, takes }) => (takes && takes.length > 0 ? [ownWordsOf(tag, takes)] : [])));
    } catch {
      return failed('not read');
    }
  },
  change: (how, tag = language()) =>
    navigator.locks.request(LOCK, async (): Promise<Kept> => {
      try {
        const before = await lying(tag);
        const takes = how(before.takes);
        if (takes !== null) await put(tag, takes, before);
        return told(takes);
      } catch {
        return failed('not kept');
      }
    }),
  erase: () =>
    navigator.locks.request(LOCK, async (): Promise<Result<undefined, TakesFault>> => {
      try {
        const tag = language();
        demanded(await store.remove(demanded(await keysUnder(keyOf(tag)))));
        await del(copyOf(tag), secondCopy);
        return got(undefined);
      } catch {
        return failed('not erased');
      }
    }),
});

interface Lying {
  readonly keys: readonly string[];
  /** Null where something of them cannot be read. */
  readonly takes: readonly Take[] | null;
}

/** What lies under the keys of a language; where there are none, what its second copy holds. */
async function lying(tag: string): Promise<Lying> {
  const found = demanded(await keysUnder(keyOf(tag))).toSorted();
  const read = (found.length > 0 ? await under(found) : [await get<unknown>(copyOf(tag), secondCopy)]).map((one) =>
    v.safeParse(OwnWords, one ?? ownWordsOf(tag, [])),
  );
  return { keys: found, takes: read.every(({ success }) => success) ? read.flatMap(({ output }) => (output as OwnWords).takes) : null };
}

async function under(keys: readonly string[]): Promise<readonly unknown[]> {
  const found = demanded(await store.readSome(keys));
  return keys.map((key) => found[key]);
}

/** Writes the words that changed, then drops those that are gone. No takes at all is one word without a name: not the same as nothing known. */
async function put(tag: string, takes: readonly Take[], before: Lying): Promise<void> {
  const words = [...new Set(takes.length > 0 ? takes.map(({ word }) => word) : [''])];
  const of = (some: readonly Take[], word: string): readonly Take[] => some.filter((take) => take.word === word);
  const isAsItWas = (word: string): boolean => {
    const [were, are] = [of(before.takes ?? [], word), of(takes, word)];
    return before.takes !== null && before.keys.includes(keyOf(tag, word)) && were.length === are.length && were.every((take, at) => take === are[at]);
  };
  const changed = words.filter((word) => !isAsItWas(word)).map((word) => [keyOf(tag, word), ownWordsOf(tag, of(takes, word))]);
  if (changed.length > 0) demanded(await store.write(Object.fromEntries(changed)));
  const gone = before.keys.filter((key) => !words.some((word) => keyOf(tag, word) === key));
  if (gone.length > 0) demanded(await store.remove(gone));
  // They are kept without it.
  await set(copyOf(tag), ownWordsOf(tag, takes), secondCopy).catch(() => undefined);
}

const told = (takes: readonly Take[] | null): Kept => (takes === null ? failed('not read') : got(takes));

function demanded<Value>(result: Result<Value, StoreFault>): Value {
  if (!result.ok) throw new Error(result.fault.is);
  return result.value;
}
