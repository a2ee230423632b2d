// Saving and retiring kit. A change says which state it was made from, so that two windows editing the same record
// cannot overwrite each other unseen; nothing is ever taken out, because old values point at it.
import type { Moment } from '../units.ts';
import { failed, got, type Result } from '../result.ts';
import type { Body, Converter, Kit, Lens, Situation } from './kit.ts';

/** The lists of the kit and what each holds. */
export interface KitItem {
  readonly bodies: Body;
  readonly lenses: Lens;
  readonly converters: Converter;
  readonly situations: Situation;
}
export type KitList = keyof KitItem;

/** What keeps a change from being saved: the sentence belongs to the form as a whole. */
export type SavingFault =
  { readonly is: 'changed elsewhere' | 'gone'; readonly list: KitList } | { readonly is: 'situation lacks'; readonly what: 'body' | 'lens' | 'converter' };

/**
 * The kit with this item added or replaced, stamped `now`. `seen` is the `changed` of the state it was edited from, or
 * null for a new one; if the kept one has moved on since, nothing is saved.
 */
export function put<List extends KitList>(kit: Kit, list: List, item: KitItem[List], seen: Moment | null, now: Moment): Result<Kit, SavingFault> {
  const items: readonly KitItem[KitList][] = kit[list];
  const index = items.findIndex(({ id }) => id === item.id);
  const known = items[index];
  if ((known?.changed ?? null) !== seen) return failed({ is: 'changed elsewhere', list });
  if (list === 'situations') {
    const missing = missingFor(kit, item as Situation);
    if (missing) return failed({ is: 'situation lacks', what: missing });
  }
  const later = Math.max(now, (known?.changed ?? 0) + 1) as Moment;
  const stamped = { ...item, changed: later };
  return got({ ...kit, [list]: known ? items.map((old, at) => (at === index ? stamped : old)) : [...items, stamped] });
}

/** Retires an item, or brings it back with `retired: null`. */
export function retire<List extends KitList>(kit: Kit, list: List, id: string, retired: Moment | null, now: Moment): Result<Kit, SavingFault> {
  const items: readonly KitItem[KitList][] = kit[list];
  const known = items.find((item) => item.id === id);
  if (!known) return failed({ is: 'gone', list });
  return put(kit, list, { ...known, retired } as KitItem[List], known.changed, now);
}

function missingFor(kit: Kit, situation: Situation): 'body' | 'lens' | 'converter' | null {
  const has = (items: readonly { id: string }[], id: string) => items.some((item) => item.id === id);
  if (!has(kit.bodies, situation.body)) return 'body';
  if (!has(kit.lenses, situation.lens)) return 'lens';
  return situation.converter !== null && !has(kit.converters, situation.converter) ? 'converter' : null;
}

/** Is the situation, or any of its kit, put away? */
export function isRetired(kit: Kit): (situation: Situation) => boolean {
  const away = new Set([...kit.bodies, ...kit.lenses, ...kit.converters].filter((item) => item.retired !== null).map(({ id }) => id));
  return ({ retired, body, lens, converter }) => retired !== null || away.has(body) || away.has(lens) || (converter !== null && away.has(converter));
}
