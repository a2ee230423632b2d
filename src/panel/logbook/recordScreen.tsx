// One record of the logbook, with every hold behind it.
import { useMemo } from 'preact/hooks';
import type { LogRecord } from '../../logbook/record.ts';
import { benchFrom } from '../../optics/setUp/reading.ts';
import { replay } from '../../sweep/transition.ts';
import { OffTheScale } from '../outcome/offTheScale.tsx';
import { OutcomeView } from '../outcome/outcomeView.tsx';
import { BenchNotes } from '../bench/benchNotes.tsx';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { onDay } from '../words/quantities.ts';
import { subjectInWords } from '../words/subjects.ts';
import { HowItWas } from './howItWas.tsx';
import { Replay } from './replay.tsx';

export function RecordScreen({ id }: { readonly id: string }) {
  const { session, way } = useSurroundings();
  const record = session.records.value.find((one) => one.id === id);
  return (
    <>
      <Heading onBack={() => way.back()}>{record?.subject.lens ?? 'Logbook'}</Heading>
      {record ? <Kept record={record} /> : <p>This record is no longer in the logbook.</p>}
    </>
  );
}

function Kept({ record }: { readonly record: LogRecord }) {
  const sweep = useMemo(() => replay(record.journal), [record]);
  return (
    <>
      <p class="muted small">
        {subjectInWords(record.subject).details} · {onDay(record.finished)}
      </p>
      <OutcomeView sweep={sweep} outcome={record.outcome} />
      <OffTheScale sweep={sweep} outcome={record.outcome} />
      {sweep.plan.bench && (
        <section aria-labelledby="record-bench">
          <h2 id="record-bench">The bench</h2>
          <BenchNotes bench={benchFrom(sweep.plan.bench)} />
        </section>
      )}
      <Replay journal={record.journal} />
      {!record.practice && <HowItWas record={record} />}
    </>
  );
}
