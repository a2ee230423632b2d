// Leading a whole logbook, as a backup holds it, from any earlier version to the present one. Each step is pure and is
// kept for ever; what it does not know it leaves as it was. Its result is checked by the reader, not here, so that one
// bad item does not hold up the rest. The versions count as those of the store do.
import { wholeKit } from '../kit/wholeKit.ts';
import { failed, got, type Result } from '../result.ts';

/** A logbook as it was read: an object of some version. */
export type RawLibrary = Readonly<Record<string, unknown>>;

/** Step n leads from version n + 1 to version n + 2. */
const STEPS: readonly ((library: RawLibrary) => RawLibrary)[] = [
  (library) => ({ ...library, kit: wholeKit(library['kit']), byHand: [], entries: [], notes: [] }),
];

/** The logbook in the present version; a sentence when it is none, or newer than this program. */
export function presentVersion(library: unknown): Result<RawLibrary> {
  if (!isObject(library)) return failed('This holds no logbook: choose a file that Sweepbook has written.');
  const version = library['version'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return failed('This logbook does not say its version: choose a file that Sweepbook has written.');
  }
  if (version > STEPS.length + 1) {
    return failed('This logbook was written by a newer Sweepbook: update this one first.');
  }
  return got(STEPS.slice(version - 1).reduce<RawLibrary>((older, step) => step(older), library));
}

const isObject = (value: unknown): value is RawLibrary =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
