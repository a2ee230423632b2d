// Taking in a whole logbook: a backup, a table, or a copy of how it was. A copy of what is here is kept first; without one
// nothing is touched. A crash leaves the old or the new and never a part (`inParts.ts`); what a replacing leaves out is removed right
// after, so that a crash in between leaves more than was wanted, and never less.
import { restoring } from '../../logbook/backup/restore.ts';
import type { Library as Logbook } from '../../logbook/library.ts';
import { migrate } from '../../logbook/migrations.ts';
import { KEY } from '../../logbook/keys.ts';
import { checkingContents, contentsOf } from '../../logbook/stored.ts';
import { comparing, libraryOf } from '../../logbook/storedLibrary.ts';
import type { Takes, TakesFault } from '../../platform/takes.ts';
import { unhurried } from '../../platform/unhurried.ts';
import { DONE, failed, type Result } from '../../result.ts';
import type { Moment } from '../../units.ts';
import { joinTaught } from '../../voice/ownWords/forgetting.ts';
import type { OwnWords } from '../../voice/ownWords/take.ts';
import { words } from '../../words/catalogue.ts';
import type { Changes } from './changes.ts';
import type { Stages } from './howFar.ts';
import { keepInParts } from './inParts.ts';
import type { Keeper } from './keeper.ts';
import type { LibraryStore } from './library.ts';
import type { Ports } from './ports.ts';
import type { Bringing } from './session.ts';

interface World extends Pick<Ports, 'store' | 'snapshots' | 'alone' | 'now'> {
  readonly keeper: Keeper;
  readonly library: LibraryStore;
  readonly changes: Changes;
  readonly bringing: Stages;
}

export const bring = (world: World, brought: Logbook, how: Bringing): Promise<Result> =>
  world.alone(async () => {
    const letIn = world.changes.hold();
    let written: ReadonlySet<string> = new Set();
    try {
      return await takeIn(world, brought, how, (keys) => {
        written = keys;
      });
    } finally {
      letIn((key) => written.has(key));
      world.bringing.over();
    }
  });

/** The shares of the whole that the stages have come to when they end: writing takes the most. */
const [READ, CHECKED, JOINED, COMPARED] = [0.2, 0.25, 0.3, 0.35];

async function takeIn({ store, snapshots, now, keeper, library, bringing }: World, brought: Logbook, how: Bringing, writing: (keys: Set<string>) => void) {
  const stored = await store.read(bringing.stage(0, READ));
  if (!stored.ok) return failed(words('store').fault(stored.fault));
  const at = now();
  const copied = await (await snapshots()).keep({ at, why: 'before an import', stored: stored.value });
  if (!copied.ok) return failed(words('session').bringing.notCopied);
  const { contents } = await unhurried(checkingContents(stored.value), bringing.stage(READ, CHECKED));
  const mine = libraryOf(contents);
  const after = await unhurried(restoring(mine, brought, how), bringing.stage(CHECKED, JOINED));
  const different = await unhurried(comparing(mine, after), bringing.stage(JOINED, COMPARED));
  const changes = { ...different, ...(how === 'replace' ? { [KEY.replaced]: now() } : {}) };
  writing(new Set(Object.keys(changes)));
  await keepInParts(keeper, changes, at, bringing.stage(COMPARED, 1));
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
