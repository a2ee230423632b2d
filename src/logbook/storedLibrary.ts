// The logbook as one, and as the store keeps it: one key for the kit and one for each record. A restore, a merge or an
// import is a new logbook; this says which keys that changes, so that it can be written in one go.
import { canonical } from './canonical.ts';
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
export function changesBetween(before: Library, after: Library): Stored {
  const was = keysOf(before);
  const is = keysOf(after);
  const gone = [...was.keys()].filter((key) => !is.has(key)).map((key) => [key, undefined] as const);
  const changed = [...is].filter(([key, value]) => !was.has(key) || canonical(was.get(key)) !== canonical(value));
  return Object.fromEntries([...gone, ...changed]);
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
