// Situations in a list: the value to go by first, because it is what one came for. Only the first are drawn until more are
// wanted, so that each letter typed is answered at once.
import { useState } from 'preact/hooks';
import type { Shelved } from '../../logbook/shelf.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { useSurroundings } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';
import { standingInWords } from './standingInWords.ts';

const DRAWN = 20;

export function Shelf({ shelf }: { readonly shelf: readonly Shelved[] }) {
  const { way } = useSurroundings();
  const [drawn, setDrawn] = useState(DRAWN);
  return (
    <>
      <ul class="plain entries">
        {shelf.slice(0, drawn).map((shelved) => {
          const { lens, details } = subjectInWords(shelved.subject);
          return (
            <li key={shelved.subject.situation}>
              <button type="button" onClick={() => way.go({ at: 'situation', id: shelved.subject.situation })}>
                <span class="found" data-found={shelved.value === null ? 'none' : 'band'}>
                  {shelved.value === null ? 'none' : writeSteps(shelved.value)}
                </span>
                <span class="about">
                  <b>{lens}</b>
                  <small>{details}</small>
                  <small>{standingInWords(shelved)}</small>
                  {shelved.due.length > 0 && <small class="due">Due again: {shelved.due[0]?.sentence}</small>}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
      {shelf.length > drawn && (
        <button type="button" onClick={() => setDrawn(drawn + 200)}>
          Show more of {shelf.length}
        </button>
      )}
    </>
  );
}
