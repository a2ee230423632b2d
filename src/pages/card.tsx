// The card of one body for the bag, on a page that can be printed: every lens with its values, their dates, how sure they
// are, and whether they stand in the camera.
import { render } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import { USUAL_LIMITS } from '../logbook/due.ts';
import { cardOf, type Card } from '../logbook/card.ts';
import { shelfOf } from '../logbook/shelf.ts';
import { contentsOf } from '../logbook/stored.ts';
import { libraryOf } from '../logbook/storedLibrary.ts';
import { now } from '../platform/clock.ts';
import { store } from '../platform/storage.ts';
import { writeSteps } from '../sweep/scale.ts';
import { readWords, words } from '../words/catalogue.ts';
import { countryInUse } from '../words/countryInUse.ts';
import { run } from '../words/run.ts';
import { wearPageLanguages } from './pageLanguage.ts';
import { PrintButton } from './printButton.tsx';

/** CSS knows A4 and Letter by name, but not A6 (CSS Paged Media 3, 7.1). */
const PAPER = {
  A6: 'size: 105mm 148mm; margin: 8mm',
  A4: 'size: 210mm 297mm; margin: 18mm',
  Letter: 'size: letter; margin: 18mm',
} as const;

/** The size of the paper: the one rule that changes, and a style in the page itself is not allowed. */
const paper = new CSSStyleSheet();
document.adoptedStyleSheets = [paper];

function CardPage({ card }: { readonly card: Card }) {
  const say = words('card');
  const [size, setSize] = useState<keyof typeof PAPER>('A6');
  useLayoutEffect(() => paper.replaceSync(`@page { ${PAPER[size]} }`), [size]);
  return (
    <main>
      <div class="controls">
        {(['A6', countryInUse.value.paper] as const).map((one) => (
          <label key={one} class="option">
            <input type="radio" name="size" checked={one === size} onChange={() => setSize(one)} /> {words('paper').sizes[one]}
          </label>
        ))}
        <PrintButton />
      </div>
      <h1>{card.body}</h1>
      <p class="muted">{run(say.about(card.serial, now()))}</p>
      {card.lenses.length === 0 && <p>{say.empty}</p>}
      {card.lenses.map(({ name, serial, lines }) => (
        <section key={name + (serial ?? '')}>
          <h2>
            {name} {serial && <small>{serial}</small>}
          </h2>
          <table>
            <tbody>
              {lines.map((line) => (
                <tr key={`${line.focalLength} ${line.distance}`}>
                  <td class="figure">{writeSteps(line.value)}</td>
                  <th scope="row">
                    {say.at(line)}
                    <small>{say.facts(line)}</small>
                  </th>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
    </main>
  );
}

/** Not awaited by the script itself: whatever it reads on demand waits until the script has run. */
async function draw(): Promise<void> {
  await wearPageLanguages();
  await readWords('card', 'paper', 'store');
  document.title = words('card').title;
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
    const { title, gone } = words('card');
    render(
      <main>
        <h1>{title}</h1>
        <p role="alert">{read.ok ? gone : words('store').fault(read.fault)}</p>
      </main>,
      place,
    );
  }
}

void draw();
