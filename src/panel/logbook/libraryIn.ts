// The logbook as one, out of the session's signals.
import { VERSION, type Library } from '../../logbook/library.ts';
import type { Session } from '../session/session.ts';

export type LogbookSignals = Pick<Session, 'kit' | 'records' | 'byHand' | 'entries' | 'notes'>;

export const libraryIn = ({ kit, records, byHand, entries, notes }: LogbookSignals): Library => ({
  version: VERSION,
  kit: kit.value,
  records: [...records.value],
  byHand: [...byHand.value],
  entries: [...entries.value],
  notes: [...notes.value],
});
