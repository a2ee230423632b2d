// What to enter for a lens on a body, on a page that can be printed: the values, how they stand in every band, and the
// measurements they rest on.
import { render } from 'preact';
import { adviceOnEntering, type Advice } from '../logbook/entering/advice.ts';
import type { Weighing } from '../logbook/entering/oneValue.ts';
import { USUAL_LIMITS } from '../logbook/due.ts';
import { shelfOf } from '../logbook/shelf.ts';
import { contentsOf } from '../logbook/stored.ts';
import { libraryOf } from '../logbook/storedLibrary.ts';
import { readAsked } from '../panel/entering/address.ts';
import { PlaceBands, PlaceView } from '../panel/entering/placeView.tsx';
import { now } from '../platform/clock.ts';
import { store } from '../platform/storage.ts';
import { readWords, words } from '../words/catalogue.ts';
import { run } from '../words/run.ts';
import { wearPageLanguages } from './pageLanguage.ts';
import { PrintButton } from './printButton.tsx';

function EnteringPage({ advice, weighing }: { readonly advice: Advice; readonly weighing: Weighing }) {
  const { page, behind, bare } = words('entering');
  const { lens, places } = advice;
  return (
    <main>
      <div class="controls">
        <PrintButton />
      </div>
      <h1>{page.title(advice)}</h1>
      <p class="muted">{run(page.about(advice, now()))}</p>
      {places.map((place) => (
        <section key={place.converter?.id ?? ''} class="place">
          <h2>{place.converter ? behind(place.converter.name) : bare}</h2>
          <PlaceView place={place} lens={lens} />
          <PlaceBands place={place} />
          {place.evidence.length > 0 && <h3>{page.restsOn(weighing.by === 'use')}</h3>}
          <ul>
            {place.evidence.map((evidence) => (
              <li key={evidence.band.id} class="small">
                {run(page.evidence(evidence, weighing.by === 'use' ? (weighing.use.get(evidence.band.id) ?? 1) : null))}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </main>
  );
}

const Missing = ({ why }: { readonly why: string }) => (
  <main>
    <h1>{words('entering').title}</h1>
    <p role="alert">{why}</p>
  </main>
);

/** Not awaited by the script itself: whatever it reads on demand waits until the script has run. */
async function draw(): Promise<void> {
  await wearPageLanguages();
  await readWords('entering', 'paper', 'store');
  document.title = words('entering').title;
  const { lensGone, gone } = words('entering').page;
  const place = document.querySelector('#entering');
  const { situation: id, weighing } = readAsked(location.hash);
  const read = await store.read();
  const contents = read.ok ? contentsOf(read.value).contents : null;
  const situation = contents?.kit.situations.find((one) => one.id === id);
  if (place && contents && situation) {
    const { days } = contents.settings.logbook;
    const shelf = shelfOf(libraryOf(contents), { at: now(), temperature: null }, { ...USUAL_LIMITS, days });
    const advice = adviceOnEntering(situation, contents.kit, shelf, weighing);
    render(advice ? <EnteringPage advice={advice} weighing={weighing} /> : <Missing why={lensGone} />, place);
  } else if (place) {
    render(<Missing why={read.ok ? gone : words('store').fault(read.fault)} />, place);
  }
}

void draw();
