// Reading what is stored when the panel opens: brought to the newest layout, checked, a copy kept once a day. Spoilt
// entries are set aside whole and told.
import type { Migrated } from '../../logbook/migrations.ts';
import { KEY, setAsideKey } from '../../logbook/keys.ts';
import { checkingContents, contentsOf, isEmpty, VERSION, type Contents, type Spoilt, type Stored } from '../../logbook/stored.ts';
import { unhurried } from '../../platform/unhurried.ts';
import { firstWords } from '../../words/first.ts';
import { words } from '../../words/catalogue.ts';
import type * as Copies from './copies.ts';
import type { CopyWorld } from './copies.ts';
import type { Stages } from './howFar.ts';

/** What is stored, or null when it cannot be used and must not be touched. `reload` reads it all again. */
export async function load(world: CopyWorld & { readonly reading: Stages }, reload: () => void): Promise<Contents | null> {
  const { store, troubles, reading } = world;
  const read = await store.read(reading.stage(0, READ));
  if (!read.ok) {
    troubles.add('reading', words('store').fault(read.fault), { label: words('session').stored.readAgain, run: reload });
    return null;
  }
  troubles.clear('reading');
  const before = KEY.bringing in read.value ? await asBefore(world) : read.value;
  if (before === null) return null;
  const migrated = await migratedFrom(before);
  if (migrated.is === 'too new') {
    troubles.add('reading', words('session').stored.tooNew);
    return null;
  }
  if (migrated.is === 'changed') {
    if (!isEmpty(before)) await withCopies(world, ({ keepCopy }) => keepCopy(world, 'before a migration', before));
    await world.keeper.keep(migrated.stored);
  }
  const stored = migrated.is === 'changed' ? migrated.stored : before;
  const { contents, spoilt } = await unhurried(checkingContents(stored), reading.stage(READ, 1));
  for (const one of spoilt) await setAside(world, one);
  void withCopies(world, ({ copyOfTheDay }) => copyOfTheDay(world, stored, reload));
  return contents;
}

/**
 * The sweep under way with what it needs, and nothing of the logbook: null where there is none, and where what is stored has to be put
 * in order first.
 */
export async function loadLive({ store }: Pick<CopyWorld, 'store'>): Promise<Contents | null> {
  const read = await store.readSome(Object.values(KEY));
  if (!read.ok || read.value[KEY.version] !== VERSION || KEY.bringing in read.value) return null;
  const { contents, spoilt } = contentsOf(read.value);
  return spoilt.length > 0 || contents.live === null ? null : contents;
}

/** Another window may be bringing it in just now: when that is over, there is nothing to put back. Null where nothing can be read. */
async function asBefore(world: CopyWorld): Promise<Stored | null> {
  return world.alone(async () => {
    const read = await world.store.read();
    if (!read.ok) return null;
    return KEY.bringing in read.value ? (await import('./brokenOff.ts')).putBack(world, read.value) : read.value;
  });
}

/** Reading takes most of the time, checking the rest. */
const READ = 0.8;

/** An older layout is rare: what leads from it is only read when it is met. */
async function migratedFrom(stored: Stored): Promise<Migrated> {
  if (stored[KEY.version] === VERSION) return { is: 'current' };
  return (await import('../../logbook/migrations.ts')).migrate(stored);
}

/** The copies are second to what is stored: their script comes after it, and a fault of theirs stops nothing. */
async function withCopies({ troubles }: CopyWorld, work: (copies: typeof Copies) => Promise<void>): Promise<void> {
  try {
    await work(await import('./copies.ts'));
  } catch {
    troubles.add('copies', firstWords().unread);
  }
}

async function setAside({ keeper, troubles, now }: CopyWorld, { key, value, field }: Spoilt): Promise<void> {
  const place = setAsideKey(key, now());
  await keeper.keep({ [place]: value, [key]: undefined });
  troubles.add(place, words('session').stored.spoilt(key, field, place));
}
