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
  (library) => ({ ...library, proofs: [] }),
];

/** Why a file holds no logbook that can be read. */
export type LibraryFault = 'no logbook' | 'no version' | 'newer';

/** The logbook in the present version. */
export function presentVersion(library: unknown): Result<RawLibrary, LibraryFault> {
  if (!isObject(library)) return failed('no logbook');
  const version = library['version'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return failed('no version');
  if (version > STEPS.length + 1) return failed('newer');
  return got(STEPS.slice(version - 1).reduce<RawLibrary>((older, step) => step(older), library));
}

const isObject = (value: unknown): value is RawLibrary => typeof value === 'object' && value !== null && !Array.isArray(value);
