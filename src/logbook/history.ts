// What each situation has been through: its measurements, its entries and what photographs showed, oldest first. Worked out in one pass for all
// situations, because lists, filters and look-up all need it for thousands.
import { pairingsOf, subjectFrom } from '../kit/kit.ts';
import type { Subject } from '../sweep/plan.ts';
import type { Entry } from './entry.ts';
import type { Library } from './library.ts';
import { measuredByHand, measuredInSweep, type Measured } from './measured.ts';
import type { ProofRecord } from './proofRecord.ts';

export interface History {
  readonly subject: Subject;
  readonly measured: readonly Measured[];
  readonly entries: readonly Entry[];
  readonly proofs: readonly ProofRecord[];
}

type Growing = { subject: Subject; measured: Measured[]; entries: Entry[]; proofs: ProofRecord[]; last: number };

/**
 * The history of every situation in the kit, and of those that only records know (their kit was never set up here).
 * What comes from the practice camera is left out, and so is a stand-in (from a table, from another computer) whose
 * sweep is here.
 */
export function historiesOf(library: Library): Map<string, History> {
  const all = new Map<string, Growing>();
  const pairing = pairingsOf(library.kit);
  for (const situation of library.kit.situations) {
    all.set(situation.id, {
      subject: subjectFrom(situation, pairing(situation)),
      measured: [],
      entries: [],
      proofs: [],
      last: Infinity,
    });
  }
  const at = (subject: Subject, when: number): Growing => {
    const known = all.get(subject.situation) ?? { subject, measured: [], entries: [], proofs: [], last: when };
    if (when > known.last) Object.assign(known, { subject, last: when });
    all.set(subject.situation, known);
    return known;
  };
  for (const record of library.records) {
    if (!record.practice) at(record.subject, record.finished).measured.push(measuredInSweep(record));
  }
  const swept = new Set(library.records.map(({ id }) => id));
  for (const record of library.byHand) {
    if (!swept.has(record.id)) at(record.subject, record.at).measured.push(measuredByHand(record));
  }
  for (const entry of library.entries) at(entry.subject, entry.at).entries.push(entry);
  for (const record of library.proofs) {
    if (!record.practice) at(record.subject, record.at).proofs.push(record);
  }
  for (const { measured, entries, proofs } of all.values()) {
    measured.sort(byTime);
    entries.sort(byTime);
    proofs.sort(byTime);
  }
  return all;
}

/** One line of a situation's page. */
export type HistoryLine =
  | { readonly line: 'measured'; readonly measured: Measured }
  | { readonly line: 'entered'; readonly entry: Entry }
  | { readonly line: 'photographed'; readonly record: ProofRecord };

/** Measurements, entries and what photographs showed together, newest first. */
export function linesOf({ measured, entries, proofs }: History): HistoryLine[] {
  const lines = [
    ...measured.map((item) => ({ at: item.at, id: item.id, line: { line: 'measured', measured: item } as const })),
    ...entries.map((item) => ({ at: item.at, id: item.id, line: { line: 'entered', entry: item } as const })),
    ...proofs.map((item) => ({ at: item.at, id: item.id, line: { line: 'photographed', record: item } as const })),
  ];
  return lines.sort((a, b) => byTime(b, a)).map(({ line }) => line);
}

/** Oldest first; at one moment, in the order of the ids, so that two computers agree. */
export const byTime = (a: { at: number; id: string }, b: { at: number; id: string }): number => a.at - b.at || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
