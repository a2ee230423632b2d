// The bench: the rig worked out for one situation, before its first hold.
import { useEffect } from 'preact/hooks';
import { Field } from '../parts/field.tsx';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { inMillimetres } from '../words/quantities.ts';
import { Cautions } from './cautions.tsx';
import { DepthCard } from './depthCard.tsx';
import { DistanceCard } from './distanceCard.tsx';
import { cornersOf } from './given.ts';
import { LightCard } from './lightCard.tsx';
import { PlaceCard } from './placeCard.tsx';
import { reckon } from './reckon.ts';
import { SquareCard } from './squareCard.tsx';
import { subjectOf } from './subject.ts';
import { TargetCard } from './targetCard.tsx';
import { typedAt } from './fields.ts';
import { useBench, type BenchNow } from './useBench.ts';
import { WalkCard } from './walkCard.tsx';
import { write, writtenDown } from './writtenDown.ts';
import { picksOf } from '../start/draft.ts';
import { focalLengthText } from '../start/typedKit.ts';
import { MANUAL, SERVICE } from '../../optics/setUp/caution.ts';

export function BenchScreen() {
  const { session, way, start } = useSurroundings();
  const standing = useBench();
  const picks = picksOf(start.draft.value, session.kit.value, session.records.value);
  const open = session.sweep.value === null && picks.situation === null;
  const focalLength = focalLengthText(start.draft.value, picks);
  return (
    <>
      <Heading onBack={() => way.back()}>The bench</Heading>
      {open && (
        <Field
          label="Focal length, mm"
          text={focalLength}
          fault={'missing' in standing && focalLength !== '' ? standing.missing : undefined}
          numeric
          onTyped={(text) => start.change({ focalLength: text })}
        />
      )}
      {'missing' in standing ? <output>{standing.missing}</output> : <Cards standing={standing} open={open} />}
    </>
  );
}

/** What fits when the bench is left goes with the sweep. */
function useWritingDown(): void {
  const { session, bench, start } = useSurroundings();
  useEffect(
    () => () => {
      const subject = subjectOf(session, start.draft.peek());
      if (typeof subject === 'string') return;
      const typed = typedAt(bench);
      const record = writtenDown(session, bench, subject, typed, reckon(typed, subject));
      if (record.readings.length > 0) write(session, bench, subject, record);
    },
    [session, bench, start],
  );
}

interface Props {
  readonly standing: Extract<BenchNow, { reckoned: unknown }>;
  readonly open: boolean;
}

function Cards({ standing: { subject, reckoned }, open }: Props) {
  useWritingDown();
  const corners = cornersOf(reckoned);
  return (
    <>
      <p class="muted small">
        {[subject.lens, subject.body, inMillimetres(reckoned.focalLength)].filter(Boolean).join(' \u00b7 ')}
      </p>
      <DistanceCard reckoned={reckoned} open={open} />
      <DepthCard reckoned={reckoned} />
      <TargetCard subject={subject} reckoned={reckoned} />
      <LightCard />
      <SquareCard reckoned={reckoned} corners={corners} />
      <PlaceCard reckoned={reckoned} />
      <WalkCard reckoned={reckoned} />
      <Cautions all={[MANUAL, SERVICE]} />
    </>
  );
}
