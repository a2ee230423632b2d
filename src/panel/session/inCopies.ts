// Changing what is stored in every copy this browser keeps: what a person wants erased must go from there too.
import type { Snapshots } from '../../platform/snapshots.ts';
import type { Stored } from '../../logbook/stored.ts';

/** A copy that `change` gives back as the very same is not written. It ends at the first copy that cannot be read or kept. */
export async function inCopies(copies: Snapshots, change: (stored: Stored) => Stored): Promise<'changed' | 'copiesUnread' | 'copyLeft'> {
  const times = await copies.times();
  if (!times.ok) return 'copiesUnread';
  for (const at of times.value) {
    const copy = await copies.read(at);
    if (!copy.ok) return 'copyLeft';
    const stored = change(copy.value.stored);
    const kept = stored === copy.value.stored ? copy : await copies.keep({ ...copy.value, stored });
    if (!kept.ok) return 'copyLeft';
  }
  return 'changed';
}
