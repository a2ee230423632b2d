// Reading what is stored when the panel opens: brought to the newest layout, checked, a copy kept once a day. Spoilt
// entries are set aside whole and told.
import type { Migrated } from '../../logbook/migrations.ts';
import { KEY, setAsideKey } from '../../logbook/keys.ts';
import { contentsOf, isEmpty, VERSION, type Contents, type Spoilt, type Stored } from '../../logbook/stored.ts';
import { firstWords } from '../../words/first.ts';
import { words } from '../../words/catalogue.ts';
import type * as Copies from './copies.ts';
import type { CopyWorld } from './copies.ts';

/** What is stored, or null when it cannot be used and must not be touched. `reload` reads it all again. */
export async function load(world: CopyWorld, reload: () => void): Promise<Contents | null> {
  const { store, troubles } = world;
  const read = await store.read();
  if (!read.ok) {
    troubles.add('reading', words('store').fault(read.fault), { label: words('session').stored.readAgain, run: reload });
    return null;
  }
  troubles.clear('reading');
  const migrated = await migratedFrom(read.value);
  if (migrated.is === 'too new') {
    troubles.add('reading', words('session').stored.tooNew);
    return null;
  }
  if (migrated.is === 'changed') {
    if (!isEmpty(read.value)) await withCopies(world, ({ keepCopy }) => keepCopy(world, 'before a migration', read.value));
    await world.keeper.keep(migrated.stored);
  }
  const stored = migrated.is === 'changed' ? migrated.stored : read.value;
  const { contents, spoilt } = contentsOf(stored);
  for (const one of spoilt) await setAside(world, one);
  void withCopies(world, ({ copyOfTheDay }) => copyOfTheDay(world, stored, reload));
  return contents;
}

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
