// Reading what is stored when the panel opens: brought to the newest layout, checked, a copy kept once a day. Spoilt
// entries are set aside whole and told; an empty store with copies beside it is offered them back.
import { migrate } from '../../logbook/migrations.ts';
import { contentsOf, isEmpty, KEY, setAsideKey, type Contents, type Spoilt, type Stored } from '../../logbook/stored.ts';
import { between, type Moment } from '../../units.ts';
import type { Keeper } from './keeper.ts';
import type { Ports } from './ports.ts';
import type { Troubles } from './troubles.ts';

type World = Pick<Ports, 'store' | 'snapshots' | 'now'> & { readonly keeper: Keeper; readonly troubles: Troubles };

const DAY = 24 * 60 * 60;

/** What is stored, or null when it cannot be used and must not be touched. `reload` reads it all again. */
export async function load(world: World, reload: () => void): Promise<Contents | null> {
  const { store, troubles } = world;
  const read = await store.read();
  if (!read.ok) {
    troubles.add('reading', read.sentence, { label: 'Read it again', run: reload });
    return null;
  }
  troubles.clear('reading');
  const migrated = migrate(read.value);
  if (migrated.is === 'too new') {
    troubles.add('reading', 'What is stored here was written by a newer Sweepbook. Update this one; until then nothing is changed.');
    return null;
  }
  if (migrated.is === 'changed') {
    if (!isEmpty(read.value)) await keepCopy(world, 'before a migration', read.value);
    await world.keeper.keep(migrated.stored);
  }
  const stored = migrated.is === 'changed' ? migrated.stored : read.value;
  const { contents, spoilt } = contentsOf(stored);
  for (const one of spoilt) await setAside(world, one);
  void copy(world, stored, reload);
  return contents;
}

async function setAside({ keeper, troubles, now }: World, { key, value, fault }: Spoilt): Promise<void> {
  const place = setAsideKey(key, now());
  await keeper.keep({ [place]: value, [key]: undefined });
  troubles.add(
    place,
    `Stored under “${key}” is something that does not fit (${fault}). It was set aside whole as “${place}” and nothing of it is lost; ` +
      'the rest is used without it.',
  );
}

/** Keeps the day's copy; where the store is empty but copies exist, offers the newest. */
async function copy(world: World, stored: Stored, reload: () => void): Promise<void> {
  const { snapshots, troubles, now } = world;
  const times = await snapshots.times();
  if (!times.ok) {
    troubles.add('copies', times.sentence);
    return;
  }
  const [newest] = times.value;
  if (isEmpty(stored)) {
    if (newest !== undefined) offer(world, newest, reload);
    return;
  }
  if (newest === undefined || between(newest, now()) >= DAY) await keepCopy(world, 'daily', stored);
}

function offer(world: World, at: Moment, reload: () => void): void {
  const { snapshots, store, keeper, troubles, now } = world;
  const day = new Date(at).toLocaleString();
  troubles.add('bring back', `Nothing is stored here any more, but there is a copy of everything from ${day}.`, {
    label: 'Bring it back',
    run: () => void bringBack(),
  });

  /** What was entered since is not overwritten: a sweep under way stays, and a newer kit is set aside. */
  async function bringBack(): Promise<void> {
    const [snapshot, there] = [await snapshots.read(at), await store.read()];
    if (!snapshot.ok || !there.ok) {
      troubles.add('bring back', snapshot.ok ? 'What is stored cannot be read just now. Try it again.' : snapshot.sentence);
      return;
    }
    const kit = there.value[KEY.kit];
    const stays = KEY.live in there.value ? { [KEY.live]: there.value[KEY.live] } : {};
    await keeper.keep({ ...snapshot.value.stored, ...stays, ...(kit === undefined ? {} : { [setAsideKey(KEY.kit, now())]: kit }) });
    troubles.clear('bring back');
    reload();
  }
}

async function keepCopy({ snapshots, troubles, now }: World, why: 'daily' | 'before a migration', stored: Stored): Promise<void> {
  const kept = await snapshots.keep({ at: now(), why, stored: { ...stored } });
  if (kept.ok) troubles.clear('copies');
  else troubles.add('copies', kept.sentence);
}
