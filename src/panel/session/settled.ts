// Whether settings are in order: each within the limits that what is stored must keep.
import * as v from 'valibot';
import { Settings } from '../../settings.ts';

/** Them, or null. */
export function settled(wanted: Settings): Settings | null {
  const read = v.safeParse(Settings, wanted);
  return read.success ? read.output : null;
}
