// Out and in: a backup of everything, tables of the results, and the copies this browser keeps by itself.
import { useState } from 'preact/hooks';
import { writeBackup } from '../../logbook/backup/backup.ts';
import { writeTable } from '../../logbook/csv/writeTable.ts';
import { isoOf } from '../../calendar.ts';
import { saveFile } from '../../platform/files.ts';
import { ownWordsOf } from '../../voice/ownWords/take.ts';
import { LANGUAGE } from '../../voice/vocabulary/en.ts';
import { libraryIn } from '../session/libraryIn.ts';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { onDay } from '../words/quantities.ts';
import { Copies } from './copies.tsx';
import { Restore } from './restore.tsx';
import { TableIn } from './tableIn.tsx';

export function FilesScreen() {
  const { session, way } = useSurroundings();
  const made = session.backedUp.value;
  const [said, setSaid] = useState('');
  const write = async (): Promise<void> => {
    const taught = await session.taught();
    const words = taught.ok && taught.value.length > 0 ? ownWordsOf(LANGUAGE, taught.value) : null;
    saveFile(`sweepbook-backup-${day()}.json`, 'application/json', writeBackup(libraryIn(session), session.clock(), words));
    session.backUp();
    setSaid(taught.ok ? '' : 'The backup is written, but without the words you taught: they cannot be read just now.');
  };
  const day = (): string => isoOf(session.clock(), 'day');
  return (
    <>
      <Heading onBack={() => way.back()}>Backup and tables</Heading>
      <section class="card" aria-labelledby="backup">
        <h2 id="backup">Backup</h2>
        <p class="small">{made === null ? 'No backup was written from here yet.' : `The newest backup is from ${onDay(made)}.`}</p>
        <button type="button" class="chief" onClick={() => void write()}>
          Write a backup file
        </button>
        {said && <p role="alert">{said}</p>}
        <Restore />
      </section>
      <section class="card" aria-labelledby="table">
        <h2 id="table">Table</h2>
        <p class="small">Every measurement and entry on a line, for a spreadsheet. The holds are only in the backup.</p>
        <button type="button" onClick={() => saveFile(`sweepbook-results-${day()}.csv`, 'text/csv', writeTable(libraryIn(session)))}>
          Write a table
        </button>
        <TableIn />
      </section>
      <Copies />
    </>
  );
}
