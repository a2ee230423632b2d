// The card of one body for the bag, on a page that can be printed: every lens with its values, their dates, how sure they
// are, and whether they stand in the camera.
import { render } from 'preact';
import { useState } from 'preact/hooks';
import { USUAL_LIMITS } from '../logbook/due.ts';
import { cardOf, type Card, type CardLine } from '../logbook/card.ts';
import { shelfOf } from '../logbook/shelf.ts';
import { contentsOf } from '../logbook/stored.ts';
import { libraryOf } from '../logbook/storedLibrary.ts';
import { inMetres, inMillimetres, inPercent, onDay } from '../panel/words/quantities.ts';
import { now } from '../platform/clock.ts';
import { store } from '../platform/storage.ts';
import { writeSteps } from '../sweep/scale.ts';
import { millimetres } from '../units.ts';

const SIZES = ['A6', 'A4'] as const;

function CardPage({ card }: { readonly card: Card }) {
  const [size, setSize] = useState<(typeof SIZES)[number]>('A6');
  return (
    <main>
      <style>{`@page { size: ${size}; margin: ${size === 'A6' ? '8mm' : '18mm'} }`}</style>
      <div class="controls">
        {SIZES.map((one) => (
          <label key={one} class="option">
            <input type="radio" name="size" checked={one === size} onChange={() => setSize(one)} /> {one}
          </label>
        ))}
        <button type="button" class="chief" onClick={() => print()}>
          Print
        </button>
      </div>
      <h1>{card.body}</h1>
      <p class="muted">
        {card.serial && `Serial ${card.serial}. `}
        Printed {onDay(now())}.
      </p>
      {card.lenses.length === 0 && <p>Nothing was measured or entered for this body yet.</p>}
      {card.lenses.map(({ name, serial, lines }) => (
        <section key={name + (serial ?? '')}>
          <h2>
            {name} {serial && <small>{serial}</small>}
          </h2>
          <table>
            <tbody>
              {lines.map((line) => (
                <tr key={`${line.focalLength} ${line.distance}`}>
                  <th scope="row">
                    {inMillimetres(millimetres(line.focalLength))} at {inMetres(millimetres(line.distance))}
                  </th>
                  <td class="figure">{writeSteps(line.value)}</td>
                  <td>{factsOf(line)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
    </main>
  );
}

const STATE: Record<CardLine['state'], string> = {
  entered: 'entered',
  measured: 'measured, not entered',
  differ: 'entered; another was measured',
};

const factsOf = ({ state, at, within, due }: CardLine): string =>
  [`${STATE[state]} ${onDay(at)}`, within !== null && `${inPercent(within)} sure`, due && 'due again'].filter(Boolean).join(', ');

const place = document.querySelector('#card');
const id = decodeURIComponent(location.hash.slice(1));
const read = await store.read();
const contents = read.ok ? contentsOf(read.value).contents : null;
const body = contents?.kit.bodies.find((one) => one.id === id);
if (place && contents && body) {
  const { days } = contents.settings.logbook;
  const shelf = shelfOf(libraryOf(contents), { at: now(), temperature: null }, { ...USUAL_LIMITS, days });
  render(<CardPage card={cardOf(body, contents.kit, shelf)} />, place);
} else if (place) {
  render(<p role="alert">{read.ok ? 'This body is no longer in the kit. Close this page and open the card from the kit again.' : read.sentence}</p>, place);
}
