// Situations in a list: the value to go by first, because it is what one came for. Only the first are drawn until more are
// wanted, so that each letter typed is answered at once.
import { useState } from 'preact/hooks';
import type { Shelved } from '../../logbook/shelf.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';

const DRAWN = 12;

export function Shelf({ shelf }: { readonly shelf: readonly Shelved[] }) {
  const say = words('logbook');
  const { way } = useSurroundings();
  const [drawn, setDrawn] = useState(DRAWN);
  return (
    <>
      <ul class="plain entries">
        {shelf.slice(0, drawn).map((shelved) => {
          const {
            subject,
            value,
            due: [reason],
          } = shelved;
          return (
            <li key={subject.situation}>
              <button type="button" onClick={() => way.go({ at: 'situation', id: subject.situation })}>
                <span class="found" data-found={value === null ? 'none' : 'band'}>
                  {value === null ? say.noValue : writeSteps(value)}
                </span>
                <span class="about">
                  <b>{subject.lens}</b>
                  <small>{say.details(subject)}</small>
                  <small>{say.standing(shelved)}</small>
                  {reason && <small class="due">{say.dueAgain(reason)}</small>}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
      {shelf.length > drawn && (
        <button type="button" onClick={() => setDrawn(drawn + 200)}>
          {say.more(shelf.length)}
        </button>
      )}
    </>
  );
}
