// A backup comes back in: first what it would bring, then, on a word, the joining or the replacing.
import { useState } from 'preact/hooks';
import { readBackup, type ReadBackup } from '../../logbook/backup/backup.ts';
import { planRestore } from '../../logbook/backup/restore.ts';
import { readText } from '../../platform/files.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { libraryIn } from '../session/libraryIn.ts';
import { ChooseFile } from '../parts/chooseFile.tsx';
import type { Bringing } from '../session/session.ts';
import { useSession } from '../useSession.ts';

const MOST_SHOWN = 50;

/** How many words, each language's counted by themselves. */
const countOf = (taught: ReadBackup['words']): number =>
  taught.map(({ takes }) => new Set(takes.map(({ word }) => word)).size).reduce((sum, count) => sum + count, 0);

export function Restore() {
  const { restore: say, unread } = words('files');
  const session = useSession();
  const [backup, setBackup] = useState<ReadBackup | null>(null);
  const [said, setSaid] = useState('');
  const look = async (file: File): Promise<void> => {
    const text = await readText(file);
    const read = text.ok ? readBackup(text.value) : null;
    setBackup(read?.ok ? read.value : null);
    setSaid(!read ? unread : read.ok ? '' : say.fault[read.fault]);
  };
  const bring = async (how: Bringing): Promise<void> => {
    if (!backup) return;
    const brought = await session.bring(backup.library, how);
    const taught = brought.ok && backup.words.length > 0 ? await session.bringTaught(backup.words, how) : null;
    const done = taught === null || taught.ok ? say.done : say.withoutWords(words('store').taught[taught.fault]);
    setSaid(brought.ok ? done : brought.fault);
    setBackup(null);
  };
  const plan = backup && planRestore(libraryIn(session), backup.library, backup.setAside);
  return (
    <>
      <ChooseFile label={say.choose} hint={words('files').drop} accept="application/json,.json" onFile={(file) => void look(file)} />
      {said && <p role="alert">{said}</p>}
      {backup && plan && (
        <div class="stack">
          <p>{run(say.plan(backup.made, plan))}</p>
          {backup.words.length > 0 && <p>{say.taught(countOf(backup.words))}</p>}
          {plan.counts.conflict > 0 && <p class="small">{say.conflict}</p>}
          <details>
            <summary>{say.each}</summary>
            <ul>
              {plan.items
                .flatMap(({ list, id, title, is }) => (is === 'same' ? [] : [{ key: `${list} ${id}`, sentence: say.item(list, title, is) }]))
                .slice(0, MOST_SHOWN)
                .map(({ key, sentence }) => (
                  <li key={key}>{sentence}</li>
                ))}
              {plan.items.length - plan.counts.same > MOST_SHOWN && <li>{say.more(plan.items.length - plan.counts.same - MOST_SHOWN)}</li>}
              {plan.invalid.slice(0, MOST_SHOWN).map(({ why }, index) => (
                <li key={index}>{say.aside(why)}</li>
              ))}
            </ul>
          </details>
          <button type="button" class="chief" onClick={() => void bring('merge')}>
            {say.join}
          </button>
          <button type="button" onClick={() => void bring('replace')}>
            {say.replace}
          </button>
          <button type="button" class="link" onClick={() => setBackup(null)}>
            {say.leave}
          </button>
        </div>
      )}
    </>
  );
}
