// What to enter for a lens on a body, on a page that can be printed: the values, how they stand in every band, and the
// measurements they rest on.
import { render } from 'preact';
import { adviceOnEntering, type Advice, type Evidence } from '../logbook/entering/advice.ts';
import type { Weighing } from '../logbook/entering/oneValue.ts';
import { USUAL_LIMITS } from '../logbook/due.ts';
import { shelfOf } from '../logbook/shelf.ts';
import { contentsOf } from '../logbook/stored.ts';
import { libraryOf } from '../logbook/storedLibrary.ts';
import { readAsked } from '../panel/entering/address.ts';
import { PlaceView } from '../panel/entering/placeView.tsx';
import { inTenths } from '../panel/words/figures.ts';
import { holdsCounted, inMetres, inMillimetres, inPercent, onDay } from '../panel/words/quantities.ts';
import { now } from '../platform/clock.ts';
import { store } from '../platform/storage.ts';
import { writeSteps } from '../sweep/scale.ts';
import { PrintButton } from './printButton.tsx';

function EnteringPage({ advice: { body, lens, places }, weighing }: { readonly advice: Advice; readonly weighing: Weighing }) {
  return (
    <main>
      <div class="controls">
        <PrintButton />
      </div>
      <h1>
        {lens.name} on {body.name}
      </h1>
      <p class="muted">
        {[body.serial && `Body ${body.serial}.`, lens.serial && `Lens ${lens.serial}.`, `Printed ${onDay(now())}.`].filter(Boolean).join(' ')} Enter it by the
        camera maker{'\u2019'}s manual, then prove it on photographs.
      </p>
      {places.map((place) => (
        <section key={place.converter?.id ?? ''} class="place">
          <h2>{place.converter ? `With ${place.converter.name}` : 'Bare lens'}</h2>
          <PlaceView place={place} lens={lens} />
          <h3>What it rests on{weighing.by === 'use' && ', weighed by use'}</h3>
          <ul>
            {place.evidence.map((evidence) => (
              <li key={evidence.band.id} class="small">
                {evidenceInWords(evidence)}
                {weighing.by === 'use' && ` Counts ${weighing.use.get(evidence.band.id) ?? 1}.`}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </main>
  );
}

function evidenceInWords({ band, measured: { at, by, holds, interval, within } }: Evidence): string {
  const where = `${inMillimetres(band.focalLength)} at ${inMetres(band.distance)}`;
  const ends = `held from ${writeSteps(band.low)} to ${writeSteps(band.high)}`;
  const how = by === 'sweep' && holds !== null ? `${holdsCounted(holds)}, ${onDay(at)}` : `${by}, ${onDay(at)}`;
  const sure = interval ? `; centre 95 % between ${inTenths(interval.from)} and ${inTenths(interval.to)}` : '';
  const step = within === null ? '' : `; within one step: ${inPercent(within)}`;
  return `${where}: ${ends} (${how})${sure}${step}.`;
}

const place = document.querySelector('#entering');
const { situation: id, weighing } = readAsked(location.hash);
const read = await store.read();
const contents = read.ok ? contentsOf(read.value).contents : null;
const situation = contents?.kit.situations.find((one) => one.id === id);
if (place && contents && situation) {
  const { days } = contents.settings.logbook;
  const shelf = shelfOf(libraryOf(contents), { at: now(), temperature: null }, { ...USUAL_LIMITS, days });
  const advice = adviceOnEntering(situation, contents.kit, shelf, weighing);
  render(advice ? <EnteringPage advice={advice} weighing={weighing} /> : <p role="alert">This lens is no longer in the kit. Close this page and open it from the logbook again.</p>, place);
} else if (place) {
  render(<p role="alert">{read.ok ? 'This is no longer in the kit. Close this page and open it from the logbook again.' : read.sentence}</p>, place);
}
