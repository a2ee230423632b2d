// Copies of everything that is stored: kept once a day and before a migration. An empty store with copies beside it is
// offered the newest back.
import { KEY, setAsideKey } from '../../logbook/keys.ts';
import { isEmpty, type Stored } from '../../logbook/stored.ts';
import { between, type Moment } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { keepInParts } from './inParts.ts';
import type { Keeper } from './keeper.ts';
import type { Ports } from './ports.ts';
import type { Mishaps } from './troubles.ts';

export type CopyWorld = Pick<Ports, 'store' | 'snapshots' | 'alone' | 'now'> & { readonly keeper: Keeper; readonly troubles: Mishaps };

const DAY = 24 * 60 * 60;

/** Keeps the day's copy; where the store is empty but copies exist, offers the newest. */
export async function copyOfTheDay(world: CopyWorld, stored: Stored, reload: () => void): Promise<void> {
  const { snapshots, troubles, now } = world;
  const times = await (await snapshots()).times();
  if (!times.ok) {
    troubles.add('copies', words('session').copies.fault[times.fault]);
    return;
  }
  const [newest] = times.value;
  if (isEmpty(stored)) {
    if (newest !== undefined) offer(world, newest, reload);
    return;
  }
  if (newest === undefined || between(newest, now()) >= DAY) await keepCopy(world, 'daily', stored);
}

function offer(world: CopyWorld, at: Moment, reload: () => void): void {
  const { snapshots, store, keeper, troubles, now } = world;
  const say = words('session');
  troubles.add('wiped', say.copies.offered(at), {
    label: say.copies.bringBack,
    run: () => void bringBack(),
  });

  /** What was entered since is not overwritten: a sweep under way stays, and a newer kit is set aside. */
  async function bringBack(): Promise<void> {
    const [snapshot, there] = [await (await snapshots()).read(at), await store.read()];
    if (!snapshot.ok || !there.ok) {
      troubles.add('wiped', snapshot.ok ? say.stored.unread : say.copies.fault[snapshot.fault]);
      return;
    }
    const kit = there.value[KEY.kit];
    const stays = KEY.live in there.value ? { [KEY.live]: there.value[KEY.live] } : {};
    const back = { ...snapshot.value.stored, ...stays, ...(kit === undefined ? {} : { [setAsideKey(KEY.kit, now())]: kit }) };
    await keepInParts(keeper, back, at);
    troubles.clear('wiped');
    reload();
  }
}

export async function keepCopy({ snapshots, troubles, now }: CopyWorld, why: 'daily' | 'before a migration', stored: Stored): Promise<void> {
  const kept = await (await snapshots()).keep({ at: now(), why, stored: { ...stored } });
  if (kept.ok) troubles.clear('copies');
  else troubles.add('copies', words('session').copies.fault[kept.fault]);
}
