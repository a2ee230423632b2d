// The logbook's lists in one shape, for everything that compares or joins whole logbooks: which items there are, when
// each was last told, and what of it can never change.
import type { KitList } from '../../kit/change.ts';
import type { Library, ListName, RecordList } from '../library.ts';
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

/** What an item is known by: a name or a note, or whose correction it is; its id where it has neither. Lengths in mm. */
export type Title =
  | { readonly by: 'name' | 'id'; readonly name: string }
  | { readonly by: 'situation'; readonly lens: string | null; readonly body: string | null; readonly focalLength: number; readonly distance: number }
  | { readonly by: 'pair'; readonly lens: string; readonly body: string };

export function titleOf(library: Library, list: ListName, id: string): Title {
  const named = (name: string | undefined): Title => (name === undefined ? { by: 'id', name: id } : { by: 'name', name });
  const kit = (items: readonly { id: string; name: string }[], of: string) => items.find((item) => item.id === of)?.name;
  if (list === 'bodies' || list === 'lenses' || list === 'converters') return named(kit(library.kit[list], id));
  if (list === 'notes') return named(library.notes.find((note) => note.id === id)?.note);
  if (list === 'situations') {
    const situation = library.kit.situations.find((item) => item.id === id);
    if (!situation) return named(undefined);
    const { bodies, lenses } = library.kit;
    const { focalLength, distance } = situation;
    return { by: 'situation', lens: kit(lenses, situation.lens) ?? null, body: kit(bodies, situation.body) ?? null, focalLength, distance };
  }
  const items: readonly { id: string; subject: { lens: string; body: string } }[] = library[list];
  const subject = items.find((item) => item.id === id)?.subject;
  return subject ? { by: 'pair', lens: subject.lens, body: subject.body } : named(undefined);
}
