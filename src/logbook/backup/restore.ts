// A restore, first dry: what the backup would bring, item by item, before anything is touched. Then the joining or the
// replacing itself, as a new state; keeping a snapshot of the old one is for whoever stores it.
import type { Library, ListName } from '../library.ts';
import type { SetAside } from '../readLibrary.ts';
import { isSame } from '../canonical.ts';
import { coreOf, KIT_LISTS, RECORD_LISTS, titlesIn, toldAt, type AnyKitItem, type RecordItem, type Title } from './items.ts';
import { atOnce, type Stepwise } from '../../stepwise.ts';
import { merging } from './merge.ts';

/** How an item of the backup compares with the one here. `newer`, `older`: the backup's, by when it was last told. */
export type Compared = 'new' | 'same' | 'newer' | 'older' | 'conflict';

interface PlannedItem {
  readonly list: ListName;
  readonly id: string;
  readonly title: Title;
  readonly is: Compared;
}

export interface RestorePlan {
  readonly items: readonly PlannedItem[];
  readonly counts: Readonly<Record<Compared | 'invalid', number>>;
  readonly invalid: readonly SetAside[];
  /** Items here that the backup does not have: kept by a merge, taken out by a replacement. */
  readonly onlyHere: number;
}

/** Compares without changing anything. */
export const planRestore = (mine: Library, theirs: Library, invalid: readonly SetAside[]): RestorePlan => atOnce(planningRestore(mine, theirs, invalid));

/** The same, one item at a step. */
export function* planningRestore(mine: Library, theirs: Library, invalid: readonly SetAside[]): Stepwise<RestorePlan> {
  const titleOf = titlesIn(theirs);
  const lists = listsOf(theirs);
  const of = lists.reduce((sum, { items: brought }) => sum + brought.length, 0);
  const items: PlannedItem[] = [];
  for (const { list, items: brought } of lists) {
    const here = new Map(itemsOf(mine, list).map((item) => [item.id, item]));
    for (const item of brought) {
      items.push({ list, id: item.id, title: titleOf(item), is: compare(here.get(item.id), item) });
      yield { done: items.length, of };
    }
  }
  const counts = { new: 0, same: 0, newer: 0, older: 0, conflict: 0, invalid: invalid.length };
  for (const { is } of items) counts[is]++;
  const total = listsOf(mine).reduce((sum, { items: here }) => sum + here.length, 0);
  const onlyHere = total - (items.length - counts.new);
  return { items, counts, invalid, onlyHere };
}

/** The logbook after the restore. */
export const restored = (mine: Library, theirs: Library, how: 'merge' | 'replace'): Library => atOnce(restoring(mine, theirs, how));

/** The same, one item at a step. */
export function* restoring(mine: Library, theirs: Library, how: 'merge' | 'replace'): Stepwise<Library> {
  return how === 'replace' ? theirs : yield* merging(mine, theirs);
}

function compare(here: AnyKitItem | RecordItem | undefined, brought: AnyKitItem | RecordItem): Compared {
  if (!here) return 'new';
  if (isSame(here, brought)) return 'same';
  const [mine, theirs] = [toldAt(here), toldAt(brought)];
  if (coreOf(here) !== coreOf(brought) || mine === theirs) return 'conflict';
  return theirs > mine ? 'newer' : 'older';
}

type ListOf = { readonly list: ListName; readonly items: readonly (AnyKitItem | RecordItem)[] };

const listsOf = (library: Library): ListOf[] => [...KIT_LISTS, ...RECORD_LISTS].map((list) => ({ list, items: itemsOf(library, list) }));

function itemsOf(library: Library, list: ListName): readonly (AnyKitItem | RecordItem)[] {
  switch (list) {
    case 'records':
    case 'byHand':
    case 'entries':
    case 'notes':
    case 'proofs':
      return library[list];
    default:
      return library.kit[list];
  }
}
