// The logbook as one, and as the store keeps it: one key for the kit and one for each record. A restore, a merge or an
// import is a new logbook; this says which keys that changes, so that it can be written in one go.
import { isSame } from './canonical.ts';
import { atOnce, type Stepwise } from '../stepwise.ts';
import type { Library } from './library.ts';
import { byHandKey, entryKey, KEY, noteKey, proofKey, recordKey } from './keys.ts';
import { VERSION, type Contents, type Stored } from './stored.ts';

export const libraryOf = ({
  kit,
  records,
  byHand,
  entries,
  notes,
  proofs,
}: Pick<Contents, 'kit' | 'records' | 'byHand' | 'entries' | 'notes' | 'proofs'>): Library => ({
  version: VERSION,
  kit,
  records: [...records],
  byHand: [...byHand],
  entries: [...entries],
  notes: [...notes],
  proofs: [...proofs],
});

/** The keys to write so that `before` becomes `after`; undefined where a key is to be taken out. */
export const changesBetween = (before: Library, after: Library): Stored => atOnce(comparing(before, after));

/** The same, one key at a step. */
export function* comparing(before: Library, after: Library): Stepwise<Stored> {
  const was = keysOf(before);
  const is = keysOf(after);
  const changes: Record<string, unknown> = {};
  for (const key of was.keys()) if (!is.has(key)) changes[key] = undefined;
  let done = 0;
  for (const [key, value] of is) {
    const known = was.get(key);
    if (known === undefined || !isSame(known, value)) changes[key] = value;
    yield { done: ++done, of: is.size };
  }
  return changes;
}

function keysOf({ kit, records, byHand, entries, notes, proofs }: Library): Map<string, unknown> {
  return new Map<string, unknown>([
    [KEY.kit, kit],
    ...records.map((record) => [recordKey(record.id), record] as const),
    ...byHand.map((record) => [byHandKey(record.id), record] as const),
    ...entries.map((entry) => [entryKey(entry.id), entry] as const),
    ...notes.map((note) => [noteKey(note.id), note] as const),
    ...proofs.map((proof) => [proofKey(proof.id), proof] as const),
  ]);
}
