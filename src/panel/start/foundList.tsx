// What the logbook knows that fits what is typed: the value first, because that is what one looks up.
import type { Shelved } from '../../logbook/shelf.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';

/** As many as stand above the Start without a scroll. */
const SHOWN = 3;

interface Props {
  readonly found: readonly Shelved[];
  readonly onPick: (found: Shelved) => void;
}

export function FoundList({ found, onPick }: Props) {
  const { way } = useSurroundings();
  return (
    <>
      <ul class="plain entries" aria-label={words('start').found.label}>
        {found.slice(0, SHOWN).map((shelved) => {
          const { lens, details } = subjectInWords(shelved.subject);
          return (
            <li key={shelved.subject.situation}>
              <button type="button" onClick={() => onPick(shelved)}>
                <span class="found" data-found={shelved.value === null ? 'none' : 'band'}>
                  {shelved.value === null ? words('start').found.none : writeSteps(shelved.value)}
                </span>
                <span class="about">
                  <b>{lens}</b>
                  <small>{details}</small>
                  <small>{words('logbook').standing(shelved)}</small>
                </span>
              </button>
            </li>
          );
        })}
      </ul>
      {found.length > SHOWN && (
        <button type="button" class="link" onClick={() => way.go({ at: 'logbook' })}>
          {words('start').found.more(found.length - SHOWN)}
        </button>
      )}
    </>
  );
}
