// The order of the records everywhere.
import type { LogRecord } from './record.ts';

export const newestFirst = (records: readonly LogRecord[]): LogRecord[] => [...records].sort((a, b) => b.finished - a.finished);
