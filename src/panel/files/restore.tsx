// A backup comes back in: first what it would bring, then, on a word, the joining or the replacing.
import { useState } from 'preact/hooks';
import { readBackup, type ReadBackup } from '../../logbook/backup/backup.ts';
import { planRestore } from '../../logbook/backup/restore.ts';
import { DONE } from '../../result.ts';
import { readText } from '../../platform/files.ts';
import { libraryIn } from '../session/libraryIn.ts';
import { ChooseFile } from '../parts/chooseFile.tsx';
import type { Bringing } from '../session/session.ts';
import { useSession } from '../useSession.ts';
import { onDay } from '../words/quantities.ts';

const MOST_SHOWN = 50;

export function Restore() {
  const session = useSession();
  const [backup, setBackup] = useState<ReadBackup | null>(null);
  const [said, setSaid] = useState('');
  const look = async (file: File): Promise<void> => {
    const text = await readText(file);
    const read = text.ok ? readBackup(text.value) : text;
    setBackup(read.ok ? read.value : null);
    setSaid(read.ok ? '' : read.sentence);
  };
  const bring = async (how: Bringing): Promise<void> => {
    if (!backup) return;
    const brought = await session.bring(backup.library, how);
    const taught = brought.ok && backup.words ? await session.bringTaught(backup.words.takes, how) : DONE;
    const done = taught.ok ? 'Done. A copy of how it was before is kept below.' : `The logbook is brought in. ${taught.sentence}`;
    setSaid(brought.ok ? done : brought.sentence);
    setBackup(null);
  };
  const plan = backup && planRestore(libraryIn(session), backup.library, backup.setAside);
  return (
    <>
      <ChooseFile label="Bring a backup back in" accept="application/json,.json" onFile={(file) => void look(file)} />
      {said && <p role="alert">{said}</p>}
      {backup && plan && (
        <div class="stack">
          <p>
            Written on {onDay(backup.made)}. {plan.sentence} Nothing is changed yet.
          </p>
          {backup.words && (
            <p>It also holds {new Set(backup.words.takes.map(({ word }) => word)).size} taught words. A word that is taught here too stays as it is if you join.</p>
          )}
          {plan.counts.conflict > 0 && (
            <p class="small">Joined, records in conflict are both kept; of kit in conflict the state that was changed later counts.</p>
          )}
          <details>
            <summary>Each of them</summary>
            <ul>
              {plan.items
                .filter(({ is }) => is !== 'same')
                .slice(0, MOST_SHOWN)
                .map(({ list, id, title, is }) => (
                  <li key={`${list} ${id}`}>
                    {title}: {is}
                  </li>
                ))}
              {plan.items.length - plan.counts.same > MOST_SHOWN && <li>and {plan.items.length - plan.counts.same - MOST_SHOWN} more</li>}
              {plan.invalid.slice(0, MOST_SHOWN).map(({ sentence }, index) => (
                <li key={index}>{sentence}</li>
              ))}
            </ul>
          </details>
          <button type="button" class="chief" onClick={() => void bring('merge')}>
            Join it with what is here
          </button>
          <button type="button" onClick={() => void bring('replace')}>
            Put it in place of everything here
          </button>
          <button type="button" class="link" onClick={() => setBackup(null)}>
            Leave everything as it is
          </button>
        </div>
      )}
    </>
  );
}
