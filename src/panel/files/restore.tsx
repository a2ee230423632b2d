// A backup comes back in: first what it would bring, then, on a word, the joining or the replacing.
import { useEffect, useState } from 'preact/hooks';
import { readingBackup, type ReadBackup } from '../../logbook/backup/backup.ts';
import { planningRestore, type RestorePlan } from '../../logbook/backup/restore.ts';
import { readText } from '../../platform/files.ts';
import { unhurried } from '../../platform/unhurried.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { useLibrary } from '../logbook/useShelf.ts';
import { ChooseFile } from '../parts/chooseFile.tsx';
import { LongWork } from '../parts/longWork.tsx';
import type { Bringing } from '../session/session.ts';
import { useSession } from '../useSession.ts';
import { useHowFar, type Long } from './useHowFar.ts';

const MOST_SHOWN = 50;

/** How many words, each language's counted by themselves. */
const countOf = (taught: ReadBackup['words']): number =>
  taught.map(({ takes }) => new Set(takes.map(({ word }) => word)).size).reduce((sum, count) => sum + count, 0);

export function Restore() {
  const { restore: say, unread, howFar } = words('files');
  const session = useSession();
  const long = useHowFar();
  const [backup, setBackup] = useState<ReadBackup | null>(null);
  const [said, setSaid] = useState('');
  const plan = usePlan(backup, long);
  const look = async (file: File): Promise<void> => {
    setBackup(null);
    const text = await readText(file);
    const read = text.ok ? await long.through('reading', (tell) => unhurried(readingBackup(text.value), tell)) : null;
    setBackup(read?.ok ? read.value : null);
    setSaid(!read ? unread : read.ok ? '' : say.fault[read.fault]);
  };
  const bring = async (how: Bringing): Promise<void> => {
    if (!backup) return;
    setBackup(null);
    const brought = await session.bring(backup.library, how);
    const taught = brought.ok && backup.words.length > 0 ? await session.bringTaught(backup.words, how) : null;
    const done = taught === null || taught.ok ? say.done : say.withoutWords(words('store').taught[taught.fault]);
    setSaid(brought.ok ? done : brought.fault);
  };
  const bringing = session.bringing.value;
  return (
    <>
      <ChooseFile label={say.choose} hint={words('files').drop} accept="application/json,.json" onFile={(file) => void look(file)} />
      {long.now && <LongWork said={howFar[long.now.what](long.now.share)} share={long.now.share} />}
      {bringing !== null && <LongWork said={howFar.bringing(bringing)} share={bringing} />}
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

/** What the backup would bring into the logbook as it is now; null until that is known. */
function usePlan(backup: ReadBackup | null, { through }: Long): RestorePlan | null {
  const library = useLibrary();
  const [plan, setPlan] = useState<RestorePlan | null>(null);
  useEffect(() => {
    setPlan(null);
    if (!backup) return;
    let isWanted = true;
    const look = async (): Promise<void> => {
      const found = await through('comparing', (tell) => unhurried(planningRestore(library, backup.library, backup.setAside), tell));
      if (isWanted) setPlan(found);
    };
    void look();
    return () => {
      isWanted = false;
    };
  }, [backup, library, through]);
  return plan;
}
