// What the plan has next, with what has to be changed before it.
import { useState } from 'preact/hooks';
import { words } from '../../words/catalogue.ts';
import { usePlanNow } from '../plan/useProgress.ts';
import { useSurroundings } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';

export function Planned() {
  const { session, way } = useSurroundings();
  const say = words('start');
  const now = usePlanNow();
  const [refusal, setRefusal] = useState('');
  const next = now?.progress.next;
  const subject = next && now.shelved.get(next.id)?.subject;
  const toPlan = (
    <button type="button" class="link" onClick={() => way.go({ at: 'plan' })}>
      {say.next.plan}
    </button>
  );
  if (!next || !subject) return now && toPlan;
  const change = now.progress.stations.find(({ is }) => is === 'next')?.change ?? null;
  const { lens, details } = subjectInWords(subject);
  const begin = async (): Promise<void> => {
    const begun = await session.begin({ with: 'kit', situation: next.id });
    if (!begun.ok) setRefusal(begun.fault);
  };
  return (
    <section class="card" aria-labelledby="planned">
      <h2 id="planned">{say.next.planned}</h2>
      {change && <p class="small">{words('plan').before(change)}</p>}
      <p>
        <b>{lens}</b>
        <br />
        {details}
      </p>
      <button type="button" class="chief start" onClick={() => void begin()}>
        {say.startWith(lens)}
      </button>
      {refusal && (
        <p class="fault" role="alert">
          {refusal}
        </p>
      )}
      {toPlan}
    </section>
  );
}
