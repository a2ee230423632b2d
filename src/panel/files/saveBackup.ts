// The backup as a file, from wherever it is asked for.
import { isoOf } from '../../calendar.ts';
import { writingBackup } from '../../logbook/backup/backup.ts';
import { saveFile } from '../../platform/files.ts';
import { unhurried } from '../../platform/unhurried.ts';
import { libraryIn } from '../session/libraryIn.ts';
import type { Session } from '../session/session.ts';
import type { HowFar } from '../../stepwise.ts';

/** Whether the taught words are in it: these may be unreadable, which keeps nothing else out. */
export async function saveBackup(session: Session, tell?: (far: HowFar) => void): Promise<boolean> {
  const taught = await session.taughtInAll();
  const at = session.clock();
  const pieces = await unhurried(writingBackup(libraryIn(session), at, taught.ok ? taught.value : []), tell);
  saveFile(`sweepbook-backup-${isoOf(at, 'day')}.json`, 'application/json', pieces);
  session.backUp(at);
  return taught.ok;
}
