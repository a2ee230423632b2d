// Joining two logbooks so that nothing is lost and the order does not matter: the same two joined either way, or
// twice, give the same. Of two states of one item the one told later counts. Records of one id that disagree in what
// can never change are both kept, one of them under a name made from its content.
import type { Kit } from '../../kit/kit.ts';
import type { Library } from '../library.ts';
import { canonical, fingerprintOf } from '../canonical.ts';
import { coreOf, isRecord, toldAt, type AnyKitItem, type RecordItem } from './items.ts';

export function merge(mine: Library, theirs: Library): Library {
  return {
    version: mine.version,
    kit: mergeKit(mine.kit, theirs.kit),
    records: join(mine.records, theirs.records),
    byHand: join(mine.byHand, theirs.byHand),
    entries: join(mine.entries, theirs.entries),
    notes: join(mine.notes, theirs.notes),
    proofs: join(mine.proofs, theirs.proofs),
  };
}

export const mergeKit = (mine: Kit, theirs: Kit): Kit => ({
  bodies: join(mine.bodies, theirs.bodies),
  lenses: join(mine.lenses, theirs.lenses),
  converters: join(mine.converters, theirs.converters),
  situations: join(mine.situations, theirs.situations),
});

/** Both lists in one, in the order of the ids. */
function join<Item extends AnyKitItem | RecordItem>(mine: readonly Item[], theirs: readonly Item[]): Item[] {
  const joined = new Map<string, Item>();
  for (const item of [...mine, ...theirs]) place(joined, item);
  return [...joined.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

function place<Item extends AnyKitItem | RecordItem>(joined: Map<string, Item>, item: Item): void {
  const known = joined.get(item.id);
  if (!known) {
    joined.set(item.id, item);
    return;
  }
  const [here, there] = [coreOf(known), coreOf(item)];
  if (here === there) {
    joined.set(item.id, laterOf(known, item));
    return;
  }
  joined.set(item.id, here > there ? known : item);
  const gives = here > there ? item : known;
  if (isRecord(gives)) place(joined, { ...gives, id: asideId(gives) } as Item);
}

/**
 * The state told later; told at the same moment, the one whose text comes later, so that every computer picks the
 * same.
 */
function laterOf<Item extends AnyKitItem | RecordItem>(one: Item, other: Item): Item {
  const [first, second] = [toldAt(one), toldAt(other)];
  if (first !== second) return first > second ? one : other;
  return canonical(one) >= canonical(other) ? one : other;
}

/** The id under which a record that disagrees is kept beside the other. */
const asideId = (item: RecordItem): string => `${item.id}~${fingerprintOf(coreOf(item))}`;
