// What must be left of a sweep: the holds that were told, in order, in its journal, whether it goes on or lies in the logbook.
import type { Journal } from '../../../../src/sweep/event.ts';
import type { LogRecord } from '../../../../src/logbook/record.ts';
import { entryKey, KEY, recordKey } from '../../../../src/logbook/keys.ts';
import { under, type Kept } from '../kept.ts';
import type { Fact } from '../ledger.ts';

export interface LiveSweep {
  readonly id: string;
  /** The name of the fact that it stands. */
  readonly what: string;
  /** Value and light of each hold. */
  readonly told: readonly string[];
}

const journalOf = ({ local }: Kept, id: string): Journal => {
  const live = (local[KEY.live] ?? []) as Journal;
  const [first] = live;
  if (first?.did === 'opened' && first.id === id) return live;
  return (local[recordKey(id)] as LogRecord | undefined)?.journal ?? [];
};

function toldIn(journal: Journal): string[] {
  let value = 0;
  return journal.flatMap((event) => {
    if (event.did === 'began') ({ value } = event);
    return event.did === 'judged' ? [hold(value, event.verdict.light)] : [];
  });
}

export const hold = (value: number, light: string): string => `${value} ${light}`;

const nameOf = (id: string): string => `sweep ${id}`;

export function liveIn(kept: Kept): LiveSweep | null {
  const [first] = (kept.local[KEY.live] ?? []) as Journal;
  return first?.did === 'opened' ? { id: first.id, what: nameOf(first.id), told: toldIn(journalOf(kept, first.id)) } : null;
}

/** It was begun, and these holds were told; one more may have been on its way. */
export const swept = (id: string, told: readonly string[]): Fact => ({
  what: nameOf(id),
  of: 'logbook',
  isIn: (kept) => {
    const journal = journalOf(kept, id);
    const left = toldIn(journal);
    return journal.length > 0 && told.every((one, at) => left[at] === one);
  },
});

/** It lies in the logbook, or its journal ends so that the next panel puts it there. */
export const finished = (id: string): Fact => ({
  what: `end of sweep ${id}`,
  of: 'logbook',
  isIn: (kept) => recordKey(id) in kept.local || journalOf(kept, id).at(-1)?.did === 'finished',
});

export const marked = (id: string): Fact => ({
  what: `value of sweep ${id} marked as entered`,
  of: 'logbook',
  isIn: (kept) => under<{ record: string | null }>(kept, entryKey('')).some(({ record }) => record === id),
});
