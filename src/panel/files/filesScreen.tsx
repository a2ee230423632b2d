// Out and in: a backup of everything, tables of the results, and the copies this browser keeps by itself.
import { useState } from 'preact/hooks';
import { styleFor } from '../../logbook/csv/style.ts';
import { writeTable } from '../../logbook/csv/writeTable.ts';
import { isoOf } from '../../calendar.ts';
import { saveFile } from '../../platform/files.ts';
import { likedLanguages } from '../../platform/language.ts';
import { words } from '../../words/catalogue.ts';
import type { Library } from '../../logbook/library.ts';
import { libraryIn } from '../session/libraryIn.ts';
import { Empty } from '../empty/empty.ts';
import { Heading } from '../parts/heading.tsx';
import { LongWork } from '../parts/longWork.tsx';
import { useSurroundings } from '../useSession.ts';
import { Copies } from './copies.tsx';
import { Restore } from './restore.tsx';
import { saveBackup } from './saveBackup.ts';
import { TableIn } from './tableIn.tsx';
import { useHowFar } from './useHowFar.ts';

export function FilesScreen() {
  const { title, backup, table, howFar } = words('files');
  const { session, way } = useSurroundings();
  const made = session.backedUp.value;
  const long = useHowFar();
  const [said, setSaid] = useState('');
  const write = async (): Promise<void> => {
    const whole = await long.through('writing', (tell) => saveBackup(session, tell));
    setSaid(whole ? '' : backup.withoutWords);
  };
  const day = (): string => isoOf(session.clock(), 'day');
  return (
    <>
      <Heading onBack={() => way.back()}>{title}</Heading>
      {made === null && isNothing(libraryIn(session)) && <Empty of="files" />}
      <section class="card" aria-labelledby="backup">
        <h2 id="backup">{backup.title}</h2>
        <p class="small">{backup.about}</p>
        <p class="small">{backup.newest(made)}</p>
        <button type="button" class="chief" onClick={() => void write()}>
          {backup.write}
        </button>
        {long.now && <LongWork said={howFar[long.now.what](long.now.share)} share={long.now.share} />}
        {said && <p role="alert">{said}</p>}
        <Restore />
      </section>
      <section class="card" aria-labelledby="table">
        <h2 id="table">{table.title}</h2>
        <p class="small">{table.about}</p>
        <button
          type="button"
          onClick={() => saveFile(`sweepbook-results-${day()}.csv`, 'text/csv', [writeTable(libraryIn(session), styleFor(likedLanguages()[0]))])}
        >
          {table.write}
        </button>
        <TableIn />
      </section>
      <Copies />
    </>
  );
}

const isNothing = ({ kit: { bodies, lenses }, records, byHand, entries }: Library): boolean =>
  [bodies, lenses, records, byHand, entries].every(({ length }) => length === 0);
