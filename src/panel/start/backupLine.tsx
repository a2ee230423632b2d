// The quiet line on the start that reminds of a backup, once there is enough to lose.
import { useState } from 'preact/hooks';
import { earnedReminder } from '../../logbook/backup/earned.ts';
import { words } from '../../words/catalogue.ts';
import { saveBackup } from '../files/saveBackup.ts';
import { useSession } from '../useSession.ts';

export function BackupLine() {
  const session = useSession();
  const { reminder: say, backup } = words('files');
  const [said, setSaid] = useState('');
  const { remind, putOff } = session.settings.value.logbook;
  const library = { records: session.records.value, byHand: session.byHand.value };
  const unsaved = remind ? earnedReminder(library, session.backedUp.value, putOff, session.clock()) : null;
  if (unsaved === null) return said ? <p role="alert">{said}</p> : null;
  const write = async (): Promise<void> => setSaid((await saveBackup(session)) ? '' : backup.withoutWords);
  return (
    <section class="notice" aria-label={say.label}>
      <p class="small">{say.unsaved(unsaved)}</p>
      <p class="small">{say.uninstall}</p>
      <div class="row">
        <button type="button" onClick={() => void write()}>
          {backup.write}
        </button>
        <button type="button" onClick={() => session.changeSettings({ logbook: { putOff: session.clock() } })}>
          {say.notNow}
        </button>
      </div>
    </section>
  );
}
