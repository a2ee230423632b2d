// Taking in a whole logbook: a backup, a table, or a copy of how it was. A copy of what is here is kept first; without one
// nothing is touched. All of it goes to disk in one write, so that a crash leaves the old or the new and never a part; what a replacing
// leaves out is removed right after, so that a crash in between leaves more than was wanted, and never less.
import { restored } from '../../logbook/backup/restore.ts';
import type { Library as Logbook } from '../../logbook/library.ts';
import { migrate } from '../../logbook/migrations.ts';
import { KEY } from '../../logbook/keys.ts';
import { contentsOf } from '../../logbook/stored.ts';
import { changesBetween, libraryOf } from '../../logbook/storedLibrary.ts';
import type { Takes, TakesFault } from '../../platform/takes.ts';
import { DONE, failed, type Result } from '../../result.ts';
import type { Moment } from '../../units.ts';
import { joinTaught } from '../../voice/ownWords/forgetting.ts';
import type { OwnWords } from '../../voice/ownWords/take.ts';
import { words } from '../../words/catalogue.ts';
import type { Keeper } from './keeper.ts';
import type { LibraryStore } from './library.ts';
import type { Ports } from './ports.ts';
import type { Bringing } from './session.ts';

type World = Pick<Ports, 'store' | 'snapshots' | 'now'> & { readonly keeper: Keeper; readonly library: LibraryStore };

export async function bring({ store, snapshots, now, keeper, library }: World, brought: Logbook, how: Bringing): Promise<Result> {
  const stored = await store.read();
  if (!stored.ok) return failed(words('store').fault(stored.fault));
  const copied = await (await snapshots()).keep({ at: now(), why: 'before an import', stored: stored.value });
  if (!copied.ok) return failed(words('session').bringing.notCopied);
  const { contents } = contentsOf(stored.value);
  const mine = libraryOf(contents);
  const after = restored(mine, brought, how);
  const changes = { ...changesBetween(mine, after), ...(how === 'replace' ? { [KEY.replaced]: now() } : {}) };
  await keeper.keep(changes);
  library.take({ ...contents, ...after });
  return Object.keys(changes).some((key) => keeper.waitsFor(key)) ? failed(words('session').stored.notOnDisk) : DONE;
}

/** Puts the logbook back as it was in a copy. */
export async function bringBack(world: World, at: Moment): Promise<Result> {
  const copy = await (await world.snapshots()).read(at);
  const say = words('session');
  if (!copy.ok) return failed(say.copies.fault[copy.fault]);
  const migrated = migrate(copy.value.stored);
  if (migrated.is === 'too new') return failed(say.bringing.tooNew);
  const { contents } = contentsOf(migrated.is === 'changed' ? migrated.stored : copy.value.stored);
  return bring(world, libraryOf(contents), 'replace');
}

/** Taught words of a backup: a word taught in both stays as it is here, or becomes the backup's; no word is lost. */
export async function bringTaught(takes: Takes, brought: readonly OwnWords[], how: Bringing): Promise<Result<undefined, TakesFault>> {
  const all = brought.map(({ language, takes: theirs }) =>
    takes.change((mine) => mine && (how === 'replace' ? joinTaught(theirs, mine) : joinTaught(mine, theirs)), language),
  );
  return (await Promise.all(all)).find((kept) => !kept.ok) ?? DONE;
}
