// One record of the logbook, with every hold behind it.
import { useMemo } from 'preact/hooks';
import type { LogRecord } from '../../logbook/record.ts';
import { benchFrom } from '../../optics/setUp/reading.ts';
import { replay } from '../../sweep/transition.ts';
import { words } from '../../words/catalogue.ts';
import { OffTheScale } from '../outcome/offTheScale.tsx';
import { OutcomeView } from '../outcome/outcomeView.tsx';
import { BenchNotes } from '../bench/benchNotes.tsx';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { namedNow } from '../words/namedNow.ts';
import { HowItWas } from './howItWas.tsx';
import { Replay } from './replay.tsx';

export function RecordScreen({ id }: { readonly id: string }) {
  const say = words('record');
  const { session, way } = useSurroundings();
  const record = session.records.value.find((one) => one.id === id);
  return (
    <>
      <Heading onBack={() => way.back()}>{record ? namedNow(record.subject).lens : say.title}</Heading>
      {record ? <Kept record={record} /> : <p>{say.gone}</p>}
    </>
  );
}

function Kept({ record }: { readonly record: LogRecord }) {
  const say = words('record');
  const sweep = useMemo(() => replay(record.journal), [record]);
  return (
    <>
      <p class="muted small">{say.details(namedNow(record.subject), record.finished)}</p>
      <OutcomeView sweep={sweep} outcome={record.outcome} />
      <OffTheScale sweep={sweep} outcome={record.outcome} />
      {sweep.plan.bench && (
        <section aria-labelledby="record-bench">
          <h2 id="record-bench">{say.bench}</h2>
          <BenchNotes bench={benchFrom(sweep.plan.bench)} />
        </section>
      )}
      <Replay journal={record.journal} />
      {!record.practice && <HowItWas record={record} />}
    </>
  );
}
