// One situation: the value to go by, why it is due again, what was measured and entered over time, and what one can do.
import type { Shelved } from '../../logbook/shelf.ts';
import { BigValue } from '../parts/bigValue.tsx';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';
import { EnterForm } from './enterForm.tsx';
import { HandForm } from './handForm.tsx';
import { HistoryChart } from './historyChart.tsx';
import { Repeated } from './repeated.tsx';
import { HistoryLines } from './historyLines.tsx';
import { standingInWords } from './shelf.tsx';
import { useShelf } from './useShelf.ts';

export function SituationScreen({ id }: { readonly id: string }) {
  const { way } = useSurroundings();
  const shelved = useShelf().find(({ subject }) => subject.situation === id);
  return (
    <>
      <Heading onBack={() => way.back()}>{shelved?.subject.lens ?? 'Logbook'}</Heading>
      {shelved ? <Page key={id} shelved={shelved} /> : <p>This situation is no longer in the logbook.</p>}
    </>
  );
}

function Page({ shelved }: { readonly shelved: Shelved }) {
  const { session, way } = useSurroundings();
  const { subject, value, measured, situation, history, due, retired } = shelved;
  const body = session.kit.value.bodies.find(({ id }) => id === situation?.body);
  return (
    <>
      <p class="muted small">{subjectInWords(subject).details}</p>
      <section class="result" aria-label="Last value">
        {value !== null && <BigValue label="Value to go by" value={value} />}
        <p>{standingInWords(shelved)}</p>
      </section>
      {due.length > 0 && (
        <section class="notice" aria-labelledby="due">
          <div>
            <h2 id="due">Due again</h2>
            <ul>
              {due.map(({ why, sentence }) => (
                <li key={why + sentence}>{sentence}</li>
              ))}
            </ul>
          </div>
        </section>
      )}
      {situation && !retired && session.sweep.value === null && (
        <button type="button" class="chief" onClick={() => void session.begin({ with: 'kit', situation: situation.id })}>
          {measured ? 'Check it again' : 'Measure it'}
        </button>
      )}
      {situation && body && (
        <button type="button" onClick={() => way.go({ at: 'entering', id: situation.id })}>
          What to enter for this lens
        </button>
      )}
      <HistoryChart history={history} />
      <Repeated measured={history.measured} />
      <HistoryLines history={history} />
      {body && (
        <>
          <EnterForm about={[{ subject, record: measured?.id ?? null }]} scale={body.scale} suggested={measured?.chosen ?? value} />
          <HandForm subject={subject} scale={body.scale} />
        </>
      )}
      {situation && (
        <button type="button" onClick={() => session.retireKit('situations', situation.id, situation.retired === null)}>
          {situation.retired === null ? 'Retire this situation' : 'Bring this situation back'}
        </button>
      )}
    </>
  );
}
