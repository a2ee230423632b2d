// Last values between the person's computers: what others have written is taken in, then what only this one knows is
// written, at most once in a while. A later value from elsewhere that changes what stands here is told.
import { batch, effect } from '@preact/signals';
import { canonical } from '../../logbook/canonical.ts';
import { USUAL_LIMITS } from '../../logbook/due.ts';
import type { Library as Logbook } from '../../logbook/library.ts';
import { shelfOf, type Shelved } from '../../logbook/shelf.ts';
import { libraryOf } from '../../logbook/storedLibrary.ts';
import { ownKeys, pack } from '../../logbook/sync/pack.ts';
import { takeInCopies } from '../../logbook/sync/unpack.ts';
import type { SyncFault } from '../../platform/syncedStore.ts';
import { got } from '../../result.ts';
import { words } from '../../words/catalogue.ts';
import type { Overtaken } from '../../words/sessionWords.ts';
import type { Keeper } from './keeper.ts';
import type { LibraryStore } from './library.ts';
import type { Ports } from './ports.ts';
import type { Mishaps } from './troubles.ts';

export type SyncWorld = Pick<Ports, 'synced' | 'now'> & {
  readonly keeper: Pick<Keeper, 'written'>;
  readonly library: LibraryStore;
  readonly troubles: Mishaps;
};

/** At most two writes each time: far below the 120 a minute that a browser allows, also with several windows open. */
const QUIET = 5000;
const AFTER_A_FAULT = 60_000;

/** Exchanges values from now on, until the function that comes back is called: it ends when the last write is over. */
export function exchangeValues(world: SyncWorld, name: string): () => Promise<void> {
  const { library, troubles } = world;
  const store = world.synced();
  let turn = Promise.resolve();
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let stopped = false;

  const soon = (after: number): void => {
    if (stopped) return;
    clearTimeout(waiting);
    waiting = setTimeout(() => void (turn = turn.then(exchange)), after);
  };

  async function exchange(): Promise<void> {
    const read = await (await store).read();
    if (stopped) return;
    if (!read.ok) return fault(read.fault);
    const unread = await receive(world, name, read.value);
    const { items, leftOut } = pack(name, shelfIn(world, libraryNow(library)), read.value);
    const changed = Object.entries(items).filter(([key, list]) => canonical(read.value[key]) !== canonical(list));
    const gone = Object.keys(read.value).filter((key) => key.startsWith(ownKeys(name)) && !(key in items));
    const written = changed.length > 0 ? await (await store).write(Object.fromEntries(changed)) : got(undefined);
    const removed = written.ok && gone.length > 0 ? await (await store).remove(gone) : written;
    if (!removed.ok) return fault(removed.fault);
    const say = words('session').sync;
    if (unread > 0) troubles.add('sync', say.unread);
    else if (leftOut > 0) troubles.add('sync', say.noRoom);
    else troubles.clear('sync');
  }

  function fault(which: SyncFault): void {
    troubles.add('sync', words('session').sync.fault[which]);
    soon(AFTER_A_FAULT);
  }

  void store.then((synced) =>
    synced.onChange((keys) => {
      if (keys.some((key) => !key.startsWith(ownKeys(name)))) soon(QUIET);
    }),
  );
  let first = true;
  const end = effect(() => {
    libraryRead(library);
    soon(first ? 0 : QUIET);
    first = false;
  });
  return () => {
    stopped = true;
    clearTimeout(waiting);
    end();
    return turn;
  };
}

/** Takes out of the browser's sync what this computer has put there. */
export async function takeBack(world: SyncWorld, name: string): Promise<void> {
  const { synced, troubles } = world;
  const store = await synced();
  const read = await store.read();
  const own = read.ok ? Object.keys(read.value).filter((key) => key.startsWith(ownKeys(name))) : [];
  const done = !read.ok || own.length === 0 ? read : await store.remove(own);
  if (done.ok) return troubles.clear('sync');
  const say = words('session').sync;
  troubles.add('sync', say.notTakenOut, {
    label: say.tryAgain,
    run: () => void takeBack(world, name),
  });
}

/** Takes in what is new, tells what of it stands in place of a value here once it is on disk, and says how much could not be read. */
async function receive(world: SyncWorld, name: string, synced: Readonly<Record<string, unknown>>): Promise<number> {
  const { keeper, library, troubles } = world;
  const before = libraryNow(library);
  const { library: after, added, unread } = takeInCopies(before, name, synced);
  if (added === 0) return unread;
  batch(() => {
    after.byHand.slice(before.byHand.length).forEach((record) => library.addByHand(record));
    after.entries.slice(before.entries.length).forEach((entry) => void library.addEntry(entry));
  });
  await keeper.written();
  const found = overtaken(shelfIn(world, before), shelfIn(world, after));
  if (found !== null) troubles.add('overtaken', words('session').sync.overtaken(found));
  return unread;
}

function overtaken(before: readonly Shelved[], after: readonly Shelved[]): Overtaken | null {
  const was = new Map(before.map(({ subject, value }) => [subject.situation, value]));
  const changed = after.flatMap(({ subject, value }) => {
    const old = was.get(subject.situation) ?? null;
    return value === null || old === null || old === value ? [] : [{ subject, value, old }];
  });
  const [one, ...more] = changed;
  if (!one) return null;
  const { subject, value, old } = one;
  return { lens: subject.lens, body: subject.body, value, old, more: more.length };
}

const libraryNow = (library: LibraryStore): Logbook =>
  libraryOf({
    kit: library.kit.peek(),
    records: library.records.peek(),
    byHand: library.byHand.peek(),
    entries: library.entries.peek(),
    notes: library.notes.peek(),
    proofs: library.proofs.peek(),
  });

/** Whatever runs this runs again when the logbook has changed. */
const libraryRead = ({ kit, records, byHand, entries }: LibraryStore): unknown[] => [kit.value, records.value, byHand.value, entries.value];

const shelfIn = ({ now }: SyncWorld, logbook: Logbook): Shelved[] => shelfOf(logbook, { at: now(), temperature: null }, USUAL_LIMITS);
