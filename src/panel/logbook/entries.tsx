// Records in a list: the value first, because it is what one came for.
import type { LogRecord } from '../../logbook/record.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { namedNow } from '../words/namedNow.ts';

export function Entries({ records }: { readonly records: readonly LogRecord[] }) {
  const { way } = useSurroundings();
  const say = words('logbook');
  return (
    <ul class="plain entries">
      {records.map(({ id, subject, outcome, finished }) => (
        <li key={id}>
          <button type="button" onClick={() => way.go({ at: 'record', id })}>
            <span class="found" data-found={outcome.found}>
              {say.result(outcome)}
            </span>
            <span class="about">
              <b>{namedNow(subject).lens}</b>
              <small>{say.details(namedNow(subject))}</small>
              <small>{say.day(finished)}</small>
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}
