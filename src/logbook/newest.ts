// The newest record of each situation: the only one whose value stands.
import type { LogRecord } from './record.ts';

/** Newest first. */
export function newestOfEach(records: readonly LogRecord[]): LogRecord[] {
  const newest = new Map<string, LogRecord>();
  for (const record of records) {
    const known = newest.get(record.subject.situation);
    if (!known || record.finished > known.finished) newest.set(record.subject.situation, record);
  }
  return [...newest.values()].sort((a, b) => b.finished - a.finished);
}
