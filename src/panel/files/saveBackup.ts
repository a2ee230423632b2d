// The backup as a file, from wherever it is asked for.
import { isoOf } from '../../calendar.ts';
import { writeBackup } from '../../logbook/backup/backup.ts';
import { saveFile } from '../../platform/files.ts';
import { libraryIn } from '../session/libraryIn.ts';
import type { Session } from '../session/session.ts';

/** Whether the taught words are in it: these may be unreadable, which keeps nothing else out. */
export async function saveBackup(session: Session): Promise<boolean> {
  const taught = await session.taughtInAll();
  const at = session.clock();
  saveFile(`sweepbook-backup-${isoOf(at, 'day')}.json`, 'application/json', writeBackup(libraryIn(session), at, taught.ok ? taught.value : []));
  session.backUp();
  return taught.ok;
}
