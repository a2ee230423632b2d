// What Sweepbook is: its version, what is new, what becomes of the data, whose work is in it, and a report of a fault to hand on.
import { isoOf } from '../../calendar.ts';
import { writeFaultReport } from '../../logbook/faultReport.ts';
import { saveFile } from '../../platform/files.ts';
import { words } from '../../words/catalogue.ts';
import { inUse } from '../../words/inUse.ts';
import { Heading } from '../parts/heading.tsx';
import { libraryIn } from '../session/libraryIn.ts';
import type { Session } from '../session/session.ts';
import { useSurroundings } from '../useSession.ts';

export function AboutScreen() {
  const { session, way } = useSurroundings();
  const { title, version, news, privacy, licences, fault } = words('about');
  return (
    <>
      <Heading onBack={() => way.back()}>{title}</Heading>
      <p class="muted">{version(session.installed.version())}</p>
      <section class="card" aria-labelledby="news">
        <h2 id="news">{news.title}</h2>
        {news.of.map((one) => (
          <div key={one.version} class="small">
            <h3>{version(one.version)}</h3>
            <ul>
              {one.lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </div>
        ))}
      </section>
      <section class="card" aria-labelledby="fault">
        <h2 id="fault">{fault.title}</h2>
        <p class="small">{fault.about}</p>
        <p class="small">{fault.give}</p>
        <button type="button" onClick={() => saveReport(session)}>
          {fault.save}
        </button>
      </section>
      <section class="card" aria-labelledby="privacy">
        <h2 id="privacy">{privacy.title}</h2>
        {privacy.sentences.map((sentence) => (
          <p key={sentence} class="small">
            {sentence}
          </p>
        ))}
      </section>
      <section class="card" aria-labelledby="licences">
        <h2 id="licences">{licences.title}</h2>
        <p class="small">{licences.about}</p>
        <button type="button" onClick={() => session.openPage('licences.txt')}>
          {licences.open}
        </button>
      </section>
    </>
  );
}

function saveReport(session: Session): void {
  const { installed, settings, backedUp, troubles } = session;
  const at = session.clock();
  const report = writeFaultReport({
    at,
    versions: { panel: installed.version(), browser: installed.browser() },
    languages: inUse.peek(),
    settings: settings.peek(),
    library: libraryIn(session),
    backup: backedUp.peek(),
    mishaps: troubles.peek().map(({ id }) => id),
  });
  saveFile(`sweepbook-fault-${isoOf(at, 'day')}.json`, 'application/json', [report]);
}
