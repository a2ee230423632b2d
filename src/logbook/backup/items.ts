// The logbook's lists in one shape, for everything that compares or joins whole logbooks: which items there are, when
// each was last told, and what of it can never change.
import type { KitList } from '../../kit/change.ts';
import type { Library, RecordList } from '../library.ts';
import { canonical } from '../canonical.ts';

export const KIT_LISTS = ['bodies', 'lenses', 'converters', 'situations'] as const satisfies readonly KitList[];
export const RECORD_LISTS = ['records', 'byHand', 'entries', 'notes', 'proofs'] as const satisfies readonly RecordList[];

export type AnyKitItem = Library['kit'][KitList][number];
export type RecordItem = Library[RecordList][number];

export const isRecord = (item: AnyKitItem | RecordItem): item is RecordItem => !('changed' in item);

/** When the changeable part was last set; 0 where it never was. */
export function toldAt(item: AnyKitItem | RecordItem): number {
  if ('changed' in item) return item.changed;
  return 'conditions' in item ? (item.conditions?.told ?? 0) : 0;
}

/** The text of what can never change; of kit, all that can never change is its id. */
export function coreOf(item: AnyKitItem | RecordItem): string {
  return isRecord(item) ? canonical({ ...item, conditions: null }) : item.id;
}

/** What an item is known by: a name or a note, or whose correction it is. Lengths in mm. */
export type Title =
  | { readonly by: 'name'; readonly name: string }
  | { readonly by: 'situation'; readonly lens: string | null; readonly body: string | null; readonly focalLength: number; readonly distance: number }
  | { readonly by: 'pair'; readonly lens: string; readonly body: string };

/** What the items of a logbook are known by; thousands are asked for, so its kit is looked through once. */
export function titlesIn({ kit }: Library): (item: AnyKitItem | RecordItem) => Title {
  const names = (items: readonly { id: string; name: string }[]) => new Map(items.map(({ id, name }) => [id, name]));
  const [bodies, lenses] = [names(kit.bodies), names(kit.lenses)];
  return (item) => {
    if ('name' in item) return { by: 'name', name: item.name };
    if ('note' in item) return { by: 'name', name: item.note };
    if ('subject' in item) return { by: 'pair', lens: item.subject.lens, body: item.subject.body };
    const { focalLength, distance } = item;
    return { by: 'situation', lens: lenses.get(item.lens) ?? null, body: bodies.get(item.body) ?? null, focalLength, distance };
  };
}
