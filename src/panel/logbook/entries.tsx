// Records in a list: the value first, because it is what one came for.
import type { LogRecord } from '../../logbook/record.ts';
import { useSurroundings } from '../useSession.ts';
import { onDay } from '../words/quantities.ts';
import { resultInWords } from '../words/results.ts';
import { subjectInWords } from '../words/subjects.ts';

export function Entries({ records }: { readonly records: readonly LogRecord[] }) {
  const { way } = useSurroundings();
  return (
    <ul class="plain entries">
      {records.map(({ id, subject, outcome, finished }) => {
        const { lens, details } = subjectInWords(subject);
        return (
          <li key={id}>
            <button type="button" onClick={() => way.go({ at: 'record', id })}>
              <span class="found" data-found={outcome.found}>
                {resultInWords(outcome)}
              </span>
              <span class="about">
                <b>{lens}</b>
                <small>{details}</small>
                <small>{onDay(finished)}</small>
              </span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
