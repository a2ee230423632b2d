// The logbook and its list, put together anew only when something in it has changed.
import { useMemo } from 'preact/hooks';
import type { Temperature } from '../../logbook/conditions.ts';
import { USUAL_LIMITS } from '../../logbook/due.ts';
import type { Library } from '../../logbook/library.ts';
import { shelfOf, type Shelved } from '../../logbook/shelf.ts';
import { libraryOf } from '../../logbook/storedLibrary.ts';
import { useSession } from '../useSession.ts';

export function useLibrary(): Library {
  const session = useSession();
  const [kit, records, byHand] = [session.kit.value, session.records.value, session.byHand.value];
  const [entries, notes, proofs] = [session.entries.value, session.notes.value, session.proofs.value];
  return useMemo(() => libraryOf({ kit, records, byHand, entries, notes, proofs }), [kit, records, byHand, entries, notes, proofs]);
}

export function useShelf(temperature: Temperature | null = null): Shelved[] {
  const session = useSession();
  const library = useLibrary();
  const { days } = session.settings.value.logbook;
  return useMemo(() => shelfOf(library, { at: session.clock(), temperature }, { ...USUAL_LIMITS, days }), [library, session, days, temperature]);
}
