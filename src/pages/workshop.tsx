// A pair that no correction reaches whole, on a page for the workshop: whose, what was found, how it was measured,
// every hold in order, and what photographs showed.
import { render } from 'preact';
import { contentsOf } from '../logbook/stored.ts';
import { libraryOf } from '../logbook/storedLibrary.ts';
import { evidenceOf, type WorkshopCase, type Series } from '../logbook/workshop.ts';
import { benchFrom } from '../optics/setUp/reading.ts';
import { BenchNotes } from '../panel/bench/benchNotes.tsx';
import { CarriedDrawing } from '../panel/outcome/carriedDrawing.tsx';
import { store } from '../platform/storage.ts';
import { writeSteps } from '../sweep/scale.ts';
import { readWords, words } from '../words/catalogue.ts';
import { wearPageLanguages } from './pageLanguage.ts';
import { PrintButton } from './printButton.tsx';

function WorkshopPage({ evidence }: { readonly evidence: WorkshopCase }) {
  const say = words('workshop');
  const { record, plan, inFocus, aside, proofs } = evidence;
  const { outcome, subject } = record;
  const started = inFocus.record?.journal[0];
  const bench = started?.did === 'opened' ? started.plan.bench : plan.bench;
  return (
    <main>
      <div class="controls">
        <PrintButton />
      </div>
      <p>{say.title}</p>
      <h1>{say.pair(subject)}</h1>
      {record.practice && <p>{say.practice}</p>}
      <p class="found">{words('spoken').outcome(outcome).written}</p>
      {outcome.found === 'carried over' && <CarriedDrawing outcome={outcome} scale={plan.scale} />}
      <Facts evidence={evidence} />
      <h2>{say.how.title}</h2>
      <ul class="how">
        <li>{say.how.focused(plan.manner.holdTime)}</li>
        <li>{say.how.counts}</li>
        {aside && <li>{say.how.aside}</li>}
        <li>{say.how.decides}</li>
      </ul>
      <h2>{say.holds.title}</h2>
      <div class="series">
        <SeriesView title={say.holds.inFocus(inFocus.holds.length)} series={inFocus} />
        {aside && <SeriesView title={say.holds.aside(aside.holds.length)} series={aside} />}
      </div>
      {proofs.length > 0 && (
        <section>
          <h2>{say.photographs.title}</h2>
          <ul class="shown">
            {proofs.map((proof) => (
              <li key={proof.id}>
                <b>{say.photographs.showed(proof)}</b> {say.photographs.by(proof)}
                <small>{say.photographs.facts(proof)}</small>
              </li>
            ))}
          </ul>
        </section>
      )}
      {bench && (
        <section>
          <h2>{say.bench}</h2>
          <BenchNotes bench={benchFrom(bench)} />
        </section>
      )}
    </main>
  );
}

function Facts({ evidence: { record, plan, pairing, inFocus } }: { readonly evidence: WorkshopCase }) {
  const say = words('workshop');
  const { scale } = plan;
  const { subject } = record;
  const facts = [
    ['body', say.named(subject.body, pairing.body?.serial ?? null)],
    ['lens', say.named(subject.lens, pairing.lens?.serial ?? null)],
    ['focalLength', say.length(subject.focalLength)],
    ['distance', say.distance(subject.distance)],
    ['range', say.range(scale)],
    ['measured', say.day((inFocus.record ?? record).finished)],
  ] as const;
  const conditions = words('conditions').inLine(record.conditions ?? inFocus.record?.conditions ?? null);
  return (
    <>
      <dl class="pair">
        {facts.map(([what, is]) => (
          <div key={what}>
            <dt>{say.facts[what]}</dt>
            <dd>{is}</dd>
          </div>
        ))}
      </dl>
      {conditions !== '' && <p>{conditions}</p>}
      <p class="small">{say.sense}</p>
    </>
  );
}

function SeriesView({ title, series: { holds } }: { readonly title: string; readonly series: Series }) {
  const { table, number, light, arrows, counts: counted } = words('workshop');
  const withArrows = holds.some(({ verdict }) => verdict.arrows !== 'none');
  return (
    <table>
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col">{table.hold}</th>
          <th scope="col" class="value">
            {table.value}
          </th>
          <th scope="col">{table.light}</th>
          {withArrows && <th scope="col">{table.arrows}</th>}
          <th scope="col">{table.counts}</th>
        </tr>
      </thead>
      <tbody>
        {holds.map(({ value, verdict, counts }, index) => (
          <tr key={index} class={counts}>
            <td>{number(index + 1)}</td>
            <td class="value">{writeSteps(value)}</td>
            <td>{light[verdict.light]}</td>
            {withArrows && <td>{arrows[verdict.arrows]}</td>}
            <td>{counted[counts]}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Not awaited by the script itself: whatever it reads on demand waits until the script has run. */
async function draw(): Promise<void> {
  await wearPageLanguages();
  await readWords('conditions', 'paper', 'readings', 'result', 'spoken', 'store', 'workshop');
  document.title = words('workshop').title;
  const place = document.querySelector('#workshop');
  const id = decodeURIComponent(location.hash.slice(1));
  const read = await store.read();
  const library = read.ok ? libraryOf(contentsOf(read.value).contents) : null;
  const record = library?.records.find((one) => one.id === id);
  if (place && library && record) {
    render(<WorkshopPage evidence={evidenceOf(record, library)} />, place);
  } else if (place) {
    const { title, gone } = words('workshop');
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
