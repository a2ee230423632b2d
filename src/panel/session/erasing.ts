// Erases every word that was heard: from the sweep under way, from the logbook, and from the copies this browser keeps.
import { KEY, recordKey } from '../../logbook/keys.ts';
import { withoutHeard } from '../../logbook/withoutHeard.ts';
import { DONE, failed, type Result } from '../../result.ts';
import { words } from '../../words/catalogue.ts';
import { inCopies } from './inCopies.ts';
import type { Keeper } from './keeper.ts';
import type { LibraryStore } from './library.ts';
import type { Live } from './live.ts';
import type { Ports } from './ports.ts';

type World = Pick<Ports, 'store' | 'snapshots'> & { readonly keeper: Keeper; readonly library: LibraryStore; readonly live: Live };

export async function eraseHeard({ store, snapshots, keeper, library, live }: World): Promise<Result> {
  const say = words('session').erasing;
  if (live.role.peek() !== 'owner') return failed(say.elsewhere);
  await live.rewrite(withoutHeard);
  const stored = await store.read();
  if (!stored.ok) return failed(words('store').fault(stored.fault));
  // The sweep under way is written by whoever runs it.
  const { [KEY.live]: _, ...rest } = stored.value;
  // A record may still wait for its place on the disk.
  const known = Object.fromEntries(library.records.peek().map((record) => [recordKey(record.id), record]));
  const changed = Object.entries({ ...rest, ...known }).filter(([, value]) => withoutHeard(value) !== value);
  library.rewriteRecords(withoutHeard);
  await keeper.keep(Object.fromEntries(changed.map(([key, value]) => [key, withoutHeard(value)])));
  const copied = await inCopies(await snapshots(), withoutHeard);
  if (copied !== 'changed') return failed(say[copied]);
  return changed.some(([key]) => keeper.waitsFor(key)) || keeper.waitsFor(KEY.live) ? failed(say.notOnDisk) : DONE;
}
