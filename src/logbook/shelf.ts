// The logbook's list: every situation with its standing and what is due, and the few ways a person narrows it.
import { isRetired } from '../kit/change.ts';
import type { Situation } from '../kit/kit.ts';
import { dueAgain, type Limits, type DueReason, type Today } from './due.ts';
import { historiesOf, type History } from './history.ts';
import type { KitNote } from './kitNote.ts';
import type { Library } from './library.ts';
import { standingOf, type Standing } from './standing.ts';

export interface Shelved extends Standing {
  readonly history: History;
  /** The situation as the kit has it; null where only records know it. */
  readonly situation: Situation | null;
  readonly retired: boolean;
  readonly due: readonly DueReason[];
}

/** Everything in the logbook, newest value first, never measured last. */
export function shelfOf(library: Library, today: Today, limits: Limits): Shelved[] {
  const situations = new Map(library.kit.situations.map((situation) => [situation.id, situation]));
  const away = isRetired(library.kit);
  const notes = new Map<string, KitNote[]>();
  for (const note of library.notes) notes.set(note.of, [...(notes.get(note.of) ?? []), note]);
  return [...historiesOf(library)]
    .map(([id, history]): Shelved => {
      const situation = situations.get(id) ?? null;
      const due = dueAgain(history, notesOn(situation, notes), today, limits);
      return { ...standingOf(history), history, situation, retired: situation !== null && away(situation), due };
    })
    .sort((a, b) => (b.at ?? -1) - (a.at ?? -1));
}

export type Show = 'all' | 'never measured' | 'due again' | 'not entered' | 'retired';

/** Narrows the list: to one body (by id, null for every body) and to one question. */
export function narrow(shelf: readonly Shelved[], body: string | null, show: Show): Shelved[] {
  return shelf.filter((shelved) => (body === null || shelved.situation?.body === body) && answers(shelved, show));
}

function answers({ state, due, retired }: Shelved, show: Show): boolean {
  if (retired) return show === 'retired';
  switch (show) {
    case 'all':
      return true;
    case 'never measured':
      return state === 'never measured';
    case 'due again':
      return due.length > 0;
    case 'not entered':
      return state === 'measured' || state === 'differ';
    case 'retired':
      return false;
  }
}

function notesOn(situation: Situation | null, notes: ReadonlyMap<string, readonly KitNote[]>): KitNote[] {
  if (!situation) return [];
  const { body, lens, converter } = situation;
  return [body, lens, converter].flatMap((id) => (id === null ? [] : (notes.get(id) ?? [])));
}
