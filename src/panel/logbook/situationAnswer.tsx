// What one came for: the value of a situation, how sure it is, since when, whether it stands in the camera and whether it is due again;
// and what it was before, in one line.
import type { Shelved } from '../../logbook/shelf.ts';
import { words } from '../../words/catalogue.ts';
import { BigValue } from '../parts/bigValue.tsx';

export function SituationAnswer({ shelved }: { readonly shelved: Shelved }) {
  const say = words('situation').answer;
  const { standing } = words('logbook');
  const { value, measured, history } = shelved;
  const sure = measured && say.sure(measured, value);
  return (
    <>
      <section class="result" aria-label={words('situation').lastValue}>
        {value !== null && <BigValue label={words('situation').value} value={value} />}
        <p>{standing(shelved)}</p>
        {sure && <p class="muted small">{sure}</p>}
        {history.measured.length > 1 && <p class="muted small">{say.before(history.measured)}</p>}
      </section>
      <Due shelved={shelved} />
    </>
  );
}

function Due({ shelved: { due, value } }: { readonly shelved: Shelved }) {
  const say = words('situation');
  const { due: reasonOf, dueAgain } = words('logbook');
  const [first, ...more] = due;
  if (!first) return value === null ? null : <p class="muted small">{say.answer.notDue}</p>;
  return (
    <section class="due-again small" aria-label={say.dueAgain}>
      <p>
        <b>{dueAgain(first)}</b>
      </p>
      {more.length > 0 && (
        <details>
          <summary>{say.answer.moreReasons(more.length)}</summary>
          <ul>
            {more.map((reason, at) => (
              <li key={at}>{reasonOf(reason)}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
