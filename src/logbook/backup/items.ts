// The logbook's lists in one shape, for everything that compares or joins whole logbooks: which items there are, when
// each was last told, and what of it can never change.
import type { Library } from '../library.ts';
import { canonical } from '../canonical.ts';

/** Kit may be edited, and the latest state of it counts. */
export type KitList = keyof Library['kit'];
/** Records are for ever; only the conditions told with them may be told again. */
export type RecordList = 'records' | 'byHand' | 'entries' | 'notes';
export type ListName = KitList | RecordList;

export const KIT_LISTS = ['bodies', 'lenses', 'converters', 'situations'] as const satisfies readonly KitList[];
export const RECORD_LISTS = ['records', 'byHand', 'entries', 'notes'] as const satisfies readonly RecordList[];

export type KitItem = Library['kit'][KitList][number];
export type RecordItem = Library[RecordList][number];

export const isRecord = (item: KitItem | RecordItem): item is RecordItem => !('changed' in item);

/** When the changeable part was last set; 0 where it never was. */
export function toldAt(item: KitItem | RecordItem): number {
  if ('changed' in item) return item.changed;
  return 'conditions' in item ? (item.conditions?.told ?? 0) : 0;
}

/** The text of what can never change; of kit, all that can never change is its id. */
export function coreOf(item: KitItem | RecordItem): string {
  return isRecord(item) ? canonical({ ...item, conditions: null }) : item.id;
}

/** What a list calls an item, for a person. */
export function titleOf(library: Library, list: ListName, id: string): string {
  const kit = (items: readonly { id: string; name: string }[]) => items.find((item) => item.id === id)?.name ?? id;
  if (list === 'bodies' || list === 'lenses' || list === 'converters') return kit(library.kit[list]);
  if (list === 'notes') return library.notes.find((note) => note.id === id)?.note ?? id;
  if (list === 'situations') {
    const situation = library.kit.situations.find((item) => item.id === id);
    if (!situation) return id;
    const { bodies, lenses } = library.kit;
    const named = (items: readonly { id: string; name: string }[], of: string) =>
      items.find((item) => item.id === of)?.name ?? '?';
    const pairing = `${named(lenses, situation.lens)} on ${named(bodies, situation.body)}`;
    return `${pairing}, ${situation.focalLength} mm at ${situation.distance / 1000} m`;
  }
  const items: readonly { id: string; subject: { lens: string; body: string } }[] = library[list];
  const subject = items.find((item) => item.id === id)?.subject;
  return subject ? `${subject.lens} on ${subject.body}` : id;
}
