// What the plan has next, with what has to be changed before it.
import { words } from '../../words/catalogue.ts';
import { Refusal } from '../parts/refusal.tsx';
import { usePlanNow } from '../plan/useProgress.ts';
import { useSurroundings } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';
import { useBeginning } from './useBeginning.ts';

export function Planned() {
  const { way } = useSurroundings();
  const say = words('start');
  const now = usePlanNow();
  const { refusal, begin } = useBeginning();
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
  return (
    <section class="card" aria-labelledby="planned">
      <h2 id="planned">{say.next.planned}</h2>
      {change && <p class="small">{words('plan').before(change)}</p>}
      <p>
        <b>{lens}</b>
        <br />
        {details}
      </p>
      <button type="button" class="chief start" onClick={() => void begin({ with: 'kit', situation: next.id })}>
        {say.startWith(lens)}
      </button>
      <Refusal sentence={refusal} />
      {toPlan}
    </section>
  );
}
