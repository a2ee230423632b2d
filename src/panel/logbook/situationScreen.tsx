// One situation: the value to go by, why it is due again, what was measured and entered over time, and what one can do.
import type { Shelved } from '../../logbook/shelf.ts';
import { words } from '../../words/catalogue.ts';
import { BigValue } from '../parts/bigValue.tsx';
import { Heading } from '../parts/heading.tsx';
import { useSession, useSurroundings } from '../useSession.ts';
import { EnterForm } from './enterForm.tsx';
import { HandForm } from './handForm.tsx';
import { HistoryChart } from './historyChart.tsx';
import { Repeated } from './repeated.tsx';
import { HistoryLines } from './historyLines.tsx';
import { useShelf } from './useShelf.ts';

interface Props {
  readonly id: string;
  /** Opened to put a value in by hand. */
  readonly byHand: boolean;
}

export function SituationScreen({ id, byHand }: Props) {
  const { way } = useSurroundings();
  const shelved = useShelf().find(({ subject }) => subject.situation === id);
  return (
    <>
      <Heading onBack={() => way.back()}>{shelved?.subject.lens ?? words('logbook').title}</Heading>
      {shelved ? <Page key={id} shelved={shelved} byHand={byHand} /> : <p>{words('situation').gone}</p>}
    </>
  );
}

function Page({ shelved, byHand }: { readonly shelved: Shelved; readonly byHand: boolean }) {
  const say = words('situation');
  const { details, standing, due: reasonOf } = words('logbook');
  const { session, way } = useSurroundings();
  const { subject, value, measured, situation, history, due, retired } = shelved;
  const body = session.kit.value.bodies.find(({ id }) => id === situation?.body);
  return (
    <>
      <p class="muted small">{details(subject)}</p>
      <section class="result" aria-label={say.lastValue}>
        {value !== null && <BigValue label={say.value} value={value} />}
        <p>{standing(shelved)}</p>
      </section>
      {due.length > 0 && (
        <section class="notice" aria-labelledby="due">
          <div>
            <h2 id="due">{say.dueAgain}</h2>
            <ul>
              {due.map((reason, at) => (
                <li key={at}>{reasonOf(reason)}</li>
              ))}
            </ul>
          </div>
        </section>
      )}
      {byHand && body && <HandForm subject={subject} scale={body.scale} open />}
      {situation && !retired && session.sweep.value === null && <Sweeps situation={situation.id} known={value !== null} />}
      {situation && body && (
        <button type="button" onClick={() => way.go({ at: 'entering', id: situation.id })}>
          {say.toEnter}
        </button>
      )}
      {situation && (
        <button type="button" onClick={() => way.go({ at: 'photographs', situation: situation.id })}>
          {say.photographs}
        </button>
      )}
      <HistoryChart history={history} />
      <Repeated measured={history.measured} />
      <HistoryLines history={history} />
      {body && (
        <>
          <EnterForm key={measured?.id} about={[{ subject, record: measured?.id ?? null }]} scale={body.scale} suggested={measured?.chosen ?? value} />
          {!byHand && <HandForm subject={subject} scale={body.scale} />}
        </>
      )}
      {situation && (
        <button type="button" onClick={() => session.retireKit('situations', situation.id, situation.retired === null)}>
          {situation.retired === null ? say.retire : say.bringBack}
        </button>
      )}
    </>
  );
}

/** A re-check begins at the old value and is done as soon as the centre is sure. */
function Sweeps({ situation, known }: { readonly situation: string; readonly known: boolean }) {
  const say = words('situation');
  const session = useSession();
  const begin = (quick: boolean): void => void session.begin({ with: 'kit', situation, ...(quick ? { care: 'quick' } : {}) });
  return known ? (
    <div class="row">
      <button type="button" class="chief grow" onClick={() => begin(true)}>
        {say.recheck}
      </button>
      <button type="button" class="grow" onClick={() => begin(false)}>
        {say.anew}
      </button>
    </div>
  ) : (
    <button type="button" class="chief" onClick={() => begin(false)}>
      {say.measure}
    </button>
  );
}
