// What the plan has next, with what has to be changed before it.
import { useState } from 'preact/hooks';
import { changeInWords } from '../plan/changeInWords.ts';
import { usePlanNow } from '../plan/useProgress.ts';
import { useSurroundings } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';
import { NEXT } from './words.ts';

export function Planned() {
  const { session, way } = useSurroundings();
  const now = usePlanNow();
  const [refusal, setRefusal] = useState('');
  const next = now?.progress.next;
  const subject = next && now.shelved.get(next.id)?.subject;
  if (!next || !subject) return null;
  const change = now.progress.stations.find(({ is }) => is === 'next')?.change ?? null;
  const { lens, details } = subjectInWords(subject);
  const begin = async (): Promise<void> => {
    const begun = await session.begin({ with: 'kit', situation: next.id });
    if (!begun.ok) setRefusal(begun.sentence);
  };
  return (
    <section class="card" aria-labelledby="planned">
      <h2 id="planned">{NEXT.planned}</h2>
      {change && <p class="small">{changeInWords(change)}</p>}
      <p>
        <b>{lens}</b>, {details}
      </p>
      <button type="button" class="chief start" onClick={() => void begin()}>
        {NEXT.startPlanned(lens)}
      </button>
      {refusal && (
        <p class="fault" role="alert">
          {refusal}
        </p>
      )}
      <button type="button" class="link" onClick={() => way.go({ at: 'plan' })}>
        {NEXT.plan}
      </button>
    </section>
  );
}
