// The logbook's list, worked out anew only when something in it has changed.
import { useMemo } from 'preact/hooks';
import { USUAL_LIMITS } from '../../logbook/due.ts';
import type { Temperature } from '../../logbook/conditions.ts';
import { shelfOf, type Shelved } from '../../logbook/shelf.ts';
import { useSession } from '../useSession.ts';
import { libraryIn } from './libraryIn.ts';

export function useShelf(temperature: Temperature | null = null): Shelved[] {
  const session = useSession();
  const { kit, records, byHand, entries, notes, settings } = session;
  const { days } = settings.value.logbook;
  return useMemo(
    () => shelfOf(libraryIn(session), { at: session.clock(), temperature }, { ...USUAL_LIMITS, days }),
    [kit.value, records.value, byHand.value, entries.value, notes.value, days, temperature],
  );
}
