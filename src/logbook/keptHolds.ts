// The holds of a kept sweep, read off its journal without adding it up.
import type { Journal, SweepEvent } from '../sweep/event.ts';
import { read, type Reading, type Verdict } from '../sweep/verdict.ts';
import type { LogRecord } from './record.ts';

export interface KeptHold {
  readonly value: number;
  readonly verdict: Verdict;
  readonly reading: Reading;
}

/** Where something was taken back or begun afresh, not all the holds are of one band. */
const REWRITTEN: readonly SweepEvent['did'][] = ['undid', 'amended', 'checked'];

export const wasRewritten = (journal: Journal): boolean => journal.some(({ did }) => REWRITTEN.includes(did));

/** Every hold that was judged, in order; of a journal that was not rewritten these are the holds that counted. */
export function keptHolds({ journal }: LogRecord): KeptHold[] {
  const [opened] = journal;
  if (opened?.did !== 'opened') return [];
  const { arrows } = opened.plan;
  const holds: KeptHold[] = [];
  let value = 0;
  for (const event of journal) {
    if (event.did === 'began') ({ value } = event);
    if (event.did === 'judged') holds.push({ value, verdict: event.verdict, reading: read(event.verdict, arrows) });
  }
  return holds;
}
