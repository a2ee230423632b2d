// A pair that no correction reaches whole, on a page for the workshop: whose, what was found, how it was measured, and
// every hold in order.
import { render } from 'preact';
import { contentsOf } from '../logbook/stored.ts';
import { libraryOf } from '../logbook/storedLibrary.ts';
import { evidenceOf, type WorkshopCase, type Series } from '../logbook/workshop.ts';
import { benchFrom } from '../optics/setUp/reading.ts';
import { BenchNotes } from '../panel/bench/benchNotes.tsx';
import { CarriedDrawing } from '../panel/outcome/carriedDrawing.tsx';
import { conditionsInWords } from '../panel/words/conditions.ts';
import { arrowsInWords, lightInWords } from '../panel/words/holds.ts';
import { holdsCounted, inMetres, inMillimetres, onDay } from '../panel/words/quantities.ts';
import { store } from '../platform/storage.ts';
import { writeSteps } from '../sweep/scale.ts';
import { outcomeInWords } from '../voice/outcomes.ts';
import { PrintButton } from './printButton.tsx';

function WorkshopPage({ evidence }: { readonly evidence: WorkshopCase }) {
  const { record, plan, inFocus, aside } = evidence;
  const { outcome, subject } = record;
  const started = inFocus.record?.journal[0];
  const bench = started?.did === 'opened' ? started.plan.bench : plan.bench;
  return (
    <main>
      <div class="controls">
        <PrintButton />
      </div>
      <p>For the workshop</p>
      <h1>
        {subject.lens} on {subject.body}
      </h1>
      {record.practice && <p>Measured on the practice camera: no real body or lens.</p>}
      <p class="found">{outcomeInWords(outcome).written}</p>
      {outcome.found === 'carried over' && <CarriedDrawing outcome={outcome} scale={plan.scale} />}
      <Facts evidence={evidence} />
      <h2>How it was measured</h2>
      <ul class="how">
        <li>
          The lens was focused in live view, enlarged, at full aperture, on a target square to the camera, and left there. Then corrections were dialled in
          one after another, and the focus light was watched through {plan.manner.holdTime} seconds of half-press each time.
        </li>
        <li>A value counts as in where the light came on at once and stayed on. The values that are in form one band; the correction is its middle.</li>
        {aside && (
          <li>
            The band runs off the scale, so its width was measured once more with the focus turned slightly aside, where all of it lies on the scale. Its
            centre in sharp focus is the end seen there, and half that width. The interval allows for the wavering of the light at the ends.
          </li>
        )}
        <li>It is what the owner saw in the viewfinder. The workshop{'\u2019'}s own measurement decides.</li>
      </ul>
      <h2>Every hold, in order</h2>
      <div class="series">
        <SeriesView title="In sharp focus" series={inFocus} />
        {aside && <SeriesView title="With the focus set aside" series={aside} />}
      </div>
      {bench && (
        <section>
          <h2>The bench</h2>
          <BenchNotes bench={benchFrom(bench)} />
        </section>
      )}
    </main>
  );
}

function Facts({ evidence: { record, plan, pairing, inFocus } }: { readonly evidence: WorkshopCase }) {
  const { scale, subject } = plan;
  const step = scale.step === 1 ? '' : ` in steps of ${scale.step}`;
  const facts = [
    ['Body', [subject.body, pairing.body?.serial].filter(Boolean).join(', ')],
    ['Lens', [subject.lens, pairing.lens?.serial].filter(Boolean).join(', ')],
    ['Focal length', inMillimetres(subject.focalLength)],
    ['Distance', inMetres(subject.distance)],
    ['Scale', `${writeSteps(scale.min)} to ${writeSteps(scale.max)}${step}`],
    ['Measured', onDay((inFocus.record ?? record).finished)],
  ] as const;
  const conditions = conditionsInWords(record.conditions ?? inFocus.record?.conditions ?? null);
  return (
    <>
      <dl class="pair">
        {facts.map(([what, is]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{is}</dd>
          </div>
        ))}
      </dl>
      {conditions !== '' && <p>{conditions}</p>}
      <p class="small">A higher correction moves the focus away from the camera.</p>
    </>
  );
}

function SeriesView({ title, series: { holds } }: { readonly title: string; readonly series: Series }) {
  const withArrows = holds.some(({ verdict }) => verdict.arrows !== 'none');
  return (
    <table>
      <caption>
        {title}, {holdsCounted(holds.length)}
      </caption>
      <thead>
        <tr>
          <th scope="col">Hold</th>
          <th scope="col" class="value">
            Value
          </th>
          <th scope="col">Light</th>
          {withArrows && <th scope="col">Arrows</th>}
          <th scope="col">Counts</th>
        </tr>
      </thead>
      <tbody>
        {holds.map(({ value, verdict, counts }, index) => (
          <tr key={index} class={counts}>
            <td>{index + 1}</td>
            <td class="value">{writeSteps(value)}</td>
            <td>{lightInWords(verdict.light)}</td>
            {withArrows && <td>{arrowsInWords(verdict.arrows)}</td>}
            <td>{counts}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const place = document.querySelector('#workshop');
const id = decodeURIComponent(location.hash.slice(1));
const read = await store.read();
const library = read.ok ? libraryOf(contentsOf(read.value).contents) : null;
const record = library?.records.find((one) => one.id === id);
if (place && library && record) {
  render(<WorkshopPage evidence={evidenceOf(record, library)} />, place);
} else if (place) {
  const sentence = read.ok ? 'This sweep is not in the logbook. Close this page and open it from the result again.' : read.sentence;
  render(
    <main>
      <h1>For the workshop</h1>
      <p role="alert">{sentence}</p>
    </main>,
    place,
  );
}
