// Leading a stored logbook from any earlier version to the present one. Each step is pure, is kept for ever, and knows
// only the two versions it stands between; what it does not know it leaves as it was. Its result is checked by the
// reader, not here, so that one bad item does not hold up the rest.
import { done, failed, type Tried } from '../tried.ts';

/** A store as it was read: an object of some version. */
export type Stored = Readonly<Record<string, unknown>>;

/** Step n leads from version n + 1 to version n + 2. */
export const migrations: readonly ((store: Stored) => Stored)[] = [wholeKit];

/** The store in the present version; a sentence when it is none, or newer than this program. */
export function migrate(store: unknown): Tried<Stored> {
  if (!isObject(store)) return failed('This holds no logbook: choose a file that Sweepbook has written.');
  const version = store['version'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return failed('This logbook does not say its version: choose a file that Sweepbook has written.');
  }
  if (version > migrations.length + 1)
    return failed('This logbook was written by a newer Sweepbook: update this one first.');
  return done(migrations.slice(version - 1).reduce<Stored>((older, step) => step(older), store));
}

/** 1 to 2: the kit is described whole, and values by hand, entries and notes are kept beside the sweeps. */
function wholeKit(store: Stored): Stored {
  const kit = isObject(store['kit']) ? store['kit'] : {};
  const kept = { changed: 0, retired: null };
  const engraved = { model: null, serial: null };
  const body = {
    sensor: null,
    zoomStore: 'one',
    remembers: null,
    copies: 'not known',
    trigger: 'half-press',
    manualFocus: 'not known',
  };
  const lens = { focal: null, widest: null, closest: null };
  return {
    ...store,
    version: 2,
    kit: {
      ...kit,
      bodies: withDefaults(kit['bodies'], { ...kept, ...engraved, ...body }),
      lenses: withDefaults(kit['lenses'], { ...kept, ...engraved, ...lens }),
      converters: [],
      situations: withDefaults(kit['situations'], { ...kept, converter: null }),
    },
    byHand: [],
    entries: [],
    notes: [],
  };
}

const withDefaults = (items: unknown, defaults: Stored): unknown =>
  Array.isArray(items) ? items.map((item: unknown) => (isObject(item) ? { ...defaults, ...item } : item)) : items;

const isObject = (value: unknown): value is Stored =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
