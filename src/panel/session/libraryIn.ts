// The logbook as one, out of the session's signals.
import type { Library } from '../../logbook/library.ts';
import { libraryOf } from '../../logbook/storedLibrary.ts';
import type { LibraryStore } from './library.ts';

type LogbookSignals = Pick<LibraryStore, 'kit' | 'records' | 'byHand' | 'entries' | 'notes' | 'proofs'>;

export const libraryIn = ({ kit, records, byHand, entries, notes, proofs }: LogbookSignals): Library =>
  libraryOf({ kit: kit.value, records: records.value, byHand: byHand.value, entries: entries.value, notes: notes.value, proofs: proofs.value });
