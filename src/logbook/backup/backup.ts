// The backup file: the whole logbook as one JSON text, with the version inside, and the words the person taught.
// `backup.schema.json` beside this file describes it for other programs; a test keeps the two in step.
import * as v from 'valibot';
import { failed, got, type Result } from '../../result.ts';
import { Moment } from '../../storedUnits.ts';
import { Library } from '../library.ts';
import type { LibraryFault } from '../libraryVersions.ts';
import { readingLibrary, type ReadLibrary } from '../readLibrary.ts';
import { atOnce, type Stepwise } from '../../stepwise.ts';
import { OwnWords } from '../../voice/ownWords/take.ts';

export const Backup = v.object({
  sweepbook: v.literal('backup'),
  /** When it was written. */
  made: Moment,
  library: Library,
  /** Patterns of the taught words; absent where none were taught. */
  words: v.exactOptional(OwnWords),
  /** The same of every other language. */
  otherWords: v.exactOptional(v.array(OwnWords)),
});
export type Backup = v.InferOutput<typeof Backup>;

const Envelope = v.object({
  sweepbook: v.literal('backup'),
  made: Moment,
  library: v.unknown(),
  words: v.optional(v.unknown()),
  otherWords: v.optional(v.array(v.unknown()), []),
});

/** Why a file is no backup that can be read. */
export type BackupFault = LibraryFault | 'too large' | 'no backup' | 'damaged';

/** Larger than any logbook; a wrong file this large is not worth the wait. */
const MOST_CHARACTERS = 200_000_000;

/** `words`: those of each language. */
export const writeBackup = (library: Library, made: Moment, words: readonly OwnWords[] = []): string => atOnce(writingBackup(library, made, words)).join('');

/** The same in pieces, one item of the logbook at a step. */
export function* writingBackup(library: Library, made: Moment, [words, ...otherWords]: readonly OwnWords[] = []): Stepwise<string[]> {
  const taught = { ...(words ? { words } : {}), ...(otherWords.length > 0 ? { otherWords } : {}) };
  const whole = { sweepbook: 'backup', made, library: { ...library, records: [] }, ...taught } satisfies Backup;
  const [before, after] = inTwo(JSON.stringify(whole, null, 1), NO_RECORDS);
  const pieces = [before];
  for (const [index, record] of library.records.entries()) {
    pieces.push(`${index === 0 ? '[' : ','}${LINE}${JSON.stringify(record, null, 1).replaceAll('\n', LINE)}`);
    yield { done: index + 1, of: library.records.length };
  }
  return [...pieces, library.records.length === 0 ? '[]' : '\n  ]', after, '\n'];
}

/** Where the records, which are nearly all of a large logbook, stand in the file, and how far in. */
const NO_RECORDS = '\n  "records": ';
const LINE = '\n   ';

function inTwo(text: string, at: string): [string, string] {
  const end = text.indexOf(at) + at.length;
  return [text.slice(0, end), text.slice(end + '[]'.length)];
}

export interface ReadBackup extends ReadLibrary {
  readonly made: Moment;
  /** Of each language. What cannot be read is missing here, and said among what was set aside. */
  readonly words: readonly OwnWords[];
}

/** Reads a backup of any version. Items that do not fit come back as set aside; nothing is thrown. */
export const readBackup = (text: string): Result<ReadBackup, BackupFault> => atOnce(readingBackup(text));

/** The same, one item of the logbook at a step. */
export function* readingBackup(text: string): Stepwise<Result<ReadBackup, BackupFault>> {
  if (text.length > MOST_CHARACTERS) return failed('too large');
  const parsed = parse(text);
  if (!parsed.ok) return parsed;
  const envelope = v.safeParse(Envelope, parsed.value);
  if (!envelope.success) return failed('no backup');
  const read = yield* readingLibrary(envelope.output.library);
  if (!read.ok) return read;
  const { made, words: written, otherWords } = envelope.output;
  const taught = (written === undefined ? otherWords : [written, ...otherWords]).map((item) => ({ item, read: v.safeParse(OwnWords, item) }));
  const unread = taught.flatMap(({ item, read: { success } }) => (success ? [] : [{ item, why: { is: 'taught words unread' } as const }]));
  const words = taught.flatMap(({ read: { success, output } }) => (success ? [output] : []));
  return got({ ...read.value, setAside: [...read.value.setAside, ...unread], made, words });
}

function parse(text: string): Result<unknown, BackupFault> {
  try {
    return got(JSON.parse(text.replace(/^\uFEFF/, '')));
  } catch {
    return failed('damaged');
  }
}
