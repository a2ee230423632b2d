// Reading what is stored when the panel opens: brought to the newest layout, checked, a copy kept once a day. Spoilt
// entries are set aside whole and told.
import { migrate } from '../../logbook/migrations.ts';
import { contentsOf, isEmpty, setAsideKey, type Contents, type Spoilt } from '../../logbook/stored.ts';
import { UNREAD } from '../../unread.ts';
import type * as Copies from './copies.ts';
import type { CopyWorld } from './copies.ts';

/** What is stored, or null when it cannot be used and must not be touched. `reload` reads it all again. */
export async function load(world: CopyWorld, reload: () => void): Promise<Contents | null> {
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
    if (!isEmpty(read.value)) await withCopies(world, ({ keepCopy }) => keepCopy(world, 'before a migration', read.value));
    await world.keeper.keep(migrated.stored);
  }
  const stored = migrated.is === 'changed' ? migrated.stored : read.value;
  const { contents, spoilt } = contentsOf(stored);
  for (const one of spoilt) await setAside(world, one);
  void withCopies(world, ({ copyOfTheDay }) => copyOfTheDay(world, stored, reload));
  return contents;
}

/** The copies are second to what is stored: their script comes after it, and a fault of theirs stops nothing. */
async function withCopies({ troubles }: CopyWorld, work: (copies: typeof Copies) => Promise<void>): Promise<void> {
  try {
    await work(await import('./copies.ts'));
  } catch {
    troubles.add('copies', UNREAD);
  }
}

async function setAside({ keeper, troubles, now }: CopyWorld, { key, value, fault }: Spoilt): Promise<void> {
  const place = setAsideKey(key, now());
  await keeper.keep({ [place]: value, [key]: undefined });
  troubles.add(
    place,
    `Stored under “${key}” is something that does not fit (${fault}). It was set aside whole as “${place}” and nothing of it is lost; ` +
      'the rest is used without it.',
  );
}
