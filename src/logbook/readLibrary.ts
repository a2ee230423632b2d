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
import { atOnce, type Stepwise } from '../stepwise.ts';
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
export const readLibrary = (stored: unknown): Result<ReadLibrary, LibraryFault> => atOnce(readingLibrary(stored));

/** The same, one item at a step. */
export function* readingLibrary(stored: unknown): Stepwise<Result<ReadLibrary, LibraryFault>> {
  const present = presentVersion(stored);
  if (!present.ok) return present;
  const store = present.value;
  const kit = isObject(store['kit']) ? store['kit'] : {};
  const setAside: SetAside[] = [];
  const far = { done: 0, of: lengthOf([...Object.values(kit), ...Object.values(store)]) };
  const library: Library = {
    version: VERSION,
    kit: {
      bodies: yield* readingList('bodies', Body, kit['bodies'], setAside, far),
      lenses: yield* readingList('lenses', Lens, kit['lenses'], setAside, far),
      converters: yield* readingList('converters', Converter, kit['converters'], setAside, far),
      situations: yield* readingList('situations', Situation, kit['situations'], setAside, far),
    },
    records: yield* readingList('records', LogRecord, store['records'], setAside, far),
    byHand: yield* readingList('byHand', HandRecord, store['byHand'], setAside, far),
    entries: yield* readingList('entries', Entry, store['entries'], setAside, far),
    notes: yield* readingList('notes', KitNote, store['notes'], setAside, far),
    proofs: yield* readingList('proofs', ProofRecord, store['proofs'], setAside, far),
  };
  return got({ library, setAside });
}

type Item = { readonly id: string };

function* readingList<Schema extends v.GenericSchema<unknown, Item>>(
  list: ListName,
  schema: Schema,
  items: unknown,
  setAside: SetAside[],
  far: { done: number; readonly of: number },
): Stepwise<v.InferOutput<Schema>[]> {
  if (items === undefined) return [];
  if (!Array.isArray(items)) {
    setAside.push({ item: items, why: { is: 'no list', list } });
    return [];
  }
  const read = new Map<string, v.InferOutput<Schema>>();
  for (const [index, item] of (items as readonly unknown[]).entries()) {
    const result = v.safeParse(schema, item);
    const at = index + 1;
    if (!result.success) setAside.push({ item, why: { is: 'unfit', list, at, ...unfitIn(result.issues[0]) } });
    else if (read.has(result.output.id)) setAside.push({ item, why: { is: 'same id', list, at } });
    else read.set(result.output.id, result.output);
    far.done += 1;
    yield { ...far };
  }
  return [...read.values()];
}

const lengthOf = (lists: readonly unknown[]): number => lists.reduce<number>((sum, list) => sum + (Array.isArray(list) ? list.length : 0), 0);

const isObject = (value: unknown): value is RawLibrary => typeof value === 'object' && value !== null && !Array.isArray(value);
