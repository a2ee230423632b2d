// Reading a logbook that may be old, damaged or not ours. Every item is judged on its own: what does not fit is set
// aside whole with the reason, and the rest is read.
import * as v from 'valibot';
import { Body, Converter, Lens, Situation } from '../kit/kit.ts';
import { got, type Result } from '../result.ts';
import { HandRecord } from './byHand.ts';
import { Entry } from './entry.ts';
import { KitNote } from './kitNote.ts';
import type { Library, ListName } from './library.ts';
import { presentVersion, type LibraryFault, type RawLibrary } from './libraryVersions.ts';
import { ProofRecord } from './proofRecord.ts';
import { LogRecord } from './record.ts';
import { VERSION } from './stored.ts';
import { unfitIn, type Unfit } from './unfit.ts';

/** Why something was not read; `at` counts the items of its list from 1. */
type WhyAside =
  | { readonly is: 'no list'; readonly list: ListName }
  | ({ readonly is: 'unfit'; readonly list: ListName; readonly at: number } & Unfit)
  | { readonly is: 'same id'; readonly list: ListName; readonly at: number }
  | { readonly is: 'taught words unread' };

/** Something that does not fit, as it was found, and why. */
export interface SetAside {
  readonly item: unknown;
  readonly why: WhyAside;
}

export interface ReadLibrary {
  readonly library: Library;
  readonly setAside: readonly SetAside[];
}

/** Reads a store of any version: a fault when it is no logbook at all, else all that fits and all that does not. */
export function readLibrary(stored: unknown): Result<ReadLibrary, LibraryFault> {
  const present = presentVersion(stored);
  if (!present.ok) return present;
  const store = present.value;
  const kit = isObject(store['kit']) ? store['kit'] : {};
  const setAside: SetAside[] = [];
  const library: Library = {
    version: VERSION,
    kit: {
      bodies: readList('bodies', Body, kit['bodies'], setAside),
      lenses: readList('lenses', Lens, kit['lenses'], setAside),
      converters: readList('converters', Converter, kit['converters'], setAside),
      situations: readList('situations', Situation, kit['situations'], setAside),
    },
    records: readList('records', LogRecord, store['records'], setAside),
    byHand: readList('byHand', HandRecord, store['byHand'], setAside),
    entries: readList('entries', Entry, store['entries'], setAside),
    notes: readList('notes', KitNote, store['notes'], setAside),
    proofs: readList('proofs', ProofRecord, store['proofs'], setAside),
  };
  return got({ library, setAside });
}

type Item = { readonly id: string };

function readList<Schema extends v.GenericSchema<unknown, Item>>(
  list: ListName,
  schema: Schema,
  items: unknown,
  setAside: SetAside[],
): v.InferOutput<Schema>[] {
  if (items === undefined) return [];
  if (!Array.isArray(items)) {
    setAside.push({ item: items, why: { is: 'no list', list } });
    return [];
  }
  const read = new Map<string, v.InferOutput<Schema>>();
  items.forEach((item: unknown, index) => {
    const result = v.safeParse(schema, item);
    const at = index + 1;
    if (!result.success) setAside.push({ item, why: { is: 'unfit', list, at, ...unfitIn(result.issues[0]) } });
    else if (read.has(result.output.id)) setAside.push({ item, why: { is: 'same id', list, at } });
    else read.set(result.output.id, result.output);
  });
  return [...read.values()];
}

const isObject = (value: unknown): value is RawLibrary => typeof value === 'object' && value !== null && !Array.isArray(value);
