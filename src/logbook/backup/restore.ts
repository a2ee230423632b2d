// A restore, first dry: what the backup would bring, item by item, before anything is touched. Then the joining or the
// replacing itself, as a new state; keeping a snapshot of the old one is for whoever stores it.
import type { Library, ListName } from '../library.ts';
import type { SetAside } from '../readLibrary.ts';
import { canonical } from '../canonical.ts';
import { coreOf, KIT_LISTS, RECORD_LISTS, titleOf, toldAt, type AnyKitItem, type RecordItem, type Title } from './items.ts';
import { merge } from './merge.ts';

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
export function planRestore(mine: Library, theirs: Library, invalid: readonly SetAside[]): RestorePlan {
  const items = listsOf(theirs).flatMap(({ list, items: brought }) => {
    const here = new Map(itemsOf(mine, list).map((item) => [item.id, item]));
    return brought.map((item): PlannedItem => {
      const is = compare(here.get(item.id), item);
      return { list, id: item.id, title: titleOf(theirs, list, item.id), is };
    });
  });
  const counts = { new: 0, same: 0, newer: 0, older: 0, conflict: 0, invalid: invalid.length };
  for (const { is } of items) counts[is]++;
  const total = listsOf(mine).reduce((sum, { items: here }) => sum + here.length, 0);
  const onlyHere = total - (items.length - counts.new);
  return { items, counts, invalid, onlyHere };
}

/** The logbook after the restore. */
export const restored = (mine: Library, theirs: Library, how: 'merge' | 'replace'): Library => (how === 'replace' ? theirs : merge(mine, theirs));

function compare(here: AnyKitItem | RecordItem | undefined, brought: AnyKitItem | RecordItem): Compared {
  if (!here) return 'new';
  if (canonical(here) === canonical(brought)) return 'same';
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
