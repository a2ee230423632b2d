// Joining two logbooks so that nothing is lost and the order does not matter: the same two joined either way, or
// twice, give the same. Of two states of one item the one told later counts. Records of one id that disagree in what
// can never change are both kept, one of them under a name made from its content.
import type { Kit } from '../../kit/kit.ts';
import { atOnce, type HowFar, type Stepwise } from '../../stepwise.ts';
import type { Library } from '../library.ts';
import { canonical, fingerprintOf, isSame } from '../canonical.ts';
import { coreOf, isRecord, toldAt, type AnyKitItem, type RecordItem } from './items.ts';

export const merge = (mine: Library, theirs: Library): Library => atOnce(merging(mine, theirs));

/** The same, one item at a step. */
export function* merging(mine: Library, theirs: Library): Stepwise<Library> {
  const far = { done: 0, of: sizeOf(mine) + sizeOf(theirs) };
  return {
    version: mine.version,
    kit: yield* mergingKit(mine.kit, theirs.kit, far),
    records: yield* joining(mine.records, theirs.records, far),
    byHand: yield* joining(mine.byHand, theirs.byHand, far),
    entries: yield* joining(mine.entries, theirs.entries, far),
    notes: yield* joining(mine.notes, theirs.notes, far),
    proofs: yield* joining(mine.proofs, theirs.proofs, far),
  };
}

export const mergeKit = (mine: Kit, theirs: Kit): Kit => atOnce(mergingKit(mine, theirs, { done: 0, of: 0 }));

function* mergingKit(mine: Kit, theirs: Kit, far: Growing): Stepwise<Kit> {
  return {
    bodies: yield* joining(mine.bodies, theirs.bodies, far),
    lenses: yield* joining(mine.lenses, theirs.lenses, far),
    converters: yield* joining(mine.converters, theirs.converters, far),
    situations: yield* joining(mine.situations, theirs.situations, far),
  };
}

type Growing = { -readonly [Part in keyof HowFar]: HowFar[Part] };

const sizeOf = ({ kit, records, byHand, entries, notes, proofs }: Library): number =>
  [...Object.values(kit), records, byHand, entries, notes, proofs].reduce((sum, { length }) => sum + length, 0);

/** Both lists in one, in the order of the ids. */
function* joining<Item extends AnyKitItem | RecordItem>(mine: readonly Item[], theirs: readonly Item[], far: Growing): Stepwise<Item[]> {
  const joined = new Map<string, Item>();
  for (const item of [...mine, ...theirs]) {
    place(joined, item);
    far.done += 1;
    yield { ...far };
  }
  return [...joined.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

function place<Item extends AnyKitItem | RecordItem>(joined: Map<string, Item>, item: Item): void {
  const known = joined.get(item.id);
  if (!known) {
    joined.set(item.id, item);
    return;
  }
  if (isSame(known, item)) return;
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
