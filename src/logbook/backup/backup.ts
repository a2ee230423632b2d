// The backup file: the whole logbook as one JSON text, with the version inside, and the words the person taught.
// `backup.schema.json` beside this file describes it for other programs; a test keeps the two in step.
import * as v from 'valibot';
import { failed, got, type Result } from '../../result.ts';
import { Moment } from '../../storedUnits.ts';
import { Library } from '../library.ts';
import type { LibraryFault } from '../libraryVersions.ts';
import { readLibrary, type ReadLibrary } from '../readLibrary.ts';
import { OwnWords } from '../../voice/ownWords/take.ts';

export const Backup = v.object({
  sweepbook: v.literal('backup'),
  /** When it was written. */
  made: Moment,
  library: Library,
  /** Patterns of the taught words; absent where none were taught. */
  words: v.exactOptional(OwnWords),
});
export type Backup = v.InferOutput<typeof Backup>;

const Envelope = v.object({ sweepbook: v.literal('backup'), made: Moment, library: v.unknown(), words: v.optional(v.unknown()) });

/** Why a file is no backup that can be read. */
export type BackupFault = LibraryFault | 'too large' | 'no backup' | 'damaged';

/** Larger than any logbook; a wrong file this large is not worth the wait. */
const MOST_CHARACTERS = 200_000_000;

export const writeBackup = (library: Library, made: Moment, words: OwnWords | null = null): string =>
  `${JSON.stringify({ sweepbook: 'backup', made, library, ...(words ? { words } : {}) } satisfies Backup, null, 1)}\n`;

export interface ReadBackup extends ReadLibrary {
  readonly made: Moment;
  /** Null where there are none, or they cannot be read: then that is said among what was set aside. */
  readonly words: OwnWords | null;
}

/** Reads a backup of any version. Items that do not fit come back as set aside; nothing is thrown. */
export function readBackup(text: string): Result<ReadBackup, BackupFault> {
  if (text.length > MOST_CHARACTERS) return failed('too large');
  const parsed = parse(text);
  if (!parsed.ok) return parsed;
  const envelope = v.safeParse(Envelope, parsed.value);
  if (!envelope.success) return failed('no backup');
  const read = readLibrary(envelope.output.library);
  if (!read.ok) return read;
  const { made, words: written } = envelope.output;
  const words = written === undefined ? null : v.safeParse(OwnWords, written);
  const setAside = words && !words.success ? [...read.value.setAside, { item: written, why: { is: 'taught words unread' } as const }] : read.value.setAside;
  return got({ ...read.value, setAside, made, words: words?.success ? words.output : null });
}

function parse(text: string): Result<unknown, BackupFault> {
  try {
    return got(JSON.parse(text.replace(/^\uFEFF/, '')));
  } catch {
    return failed('damaged');
  }
}
