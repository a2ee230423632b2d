// The bench: the rig worked out for one situation, before its first hold.
import { useEffect, useState } from 'preact/hooks';
import { Field } from '../parts/field.tsx';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';
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
import { enteredAt } from './fields.ts';
import { useBench, type BenchNow } from './useBench.ts';
import { WalkCard } from './walkCard.tsx';
import { writeDown, writtenDown } from './writtenDown.ts';
import { previewOf } from '../start/preview.ts';
import type { Kit } from '../../kit/kit.ts';
import { distanceOf } from '../../kit/told.ts';
import { readFocalLength } from '../../optics/length.ts';
import type { Unnamed } from '../../sweep/plan.ts';
import type { Millimetres } from '../../units.ts';
import { AT_FIRST } from '../../optics/setUp/caution.ts';

export function BenchScreen() {
  const say = words('bench');
  const { session, way, start } = useSurroundings();
  const standing = useBench();
  const kit = session.kit.value;
  const { parts } = previewOf(start.draft.value, { kit, records: session.records.value, offers: 'last lens' });
  const open = session.sweep.value === null && !isInKit(parts, kit);
  return (
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      {open && <FocalField known={parts.focalLength} />}
      {'missing' in standing ? <output>{say.missing[standing.missing]}</output> : <Cards standing={standing} open={open} />}
    </>
  );
}

/** What fits goes to the sweep to come at once. */
function FocalField({ known }: { readonly known: Millimetres | null }) {
  const say = words('bench');
  const { start } = useSurroundings();
  const [text, setText] = useState(known === null ? '' : String(known));
  const read = readFocalLength(text);
  const typed = (now: string): void => {
    setText(now);
    const length = readFocalLength(now);
    if (length.ok) start.tell({ focalLength: length.value });
  };
  return <Field label={say.focalLength} text={text} fault={read.ok || text === '' ? undefined : say.fault(read.fault)} numeric onTyped={typed} />;
}

/** A situation of the kit keeps its lengths. */
function isInKit(parts: Unnamed, kit: Kit): boolean {
  const distance = distanceOf(parts, kit);
  return kit.situations.some(
    (one) =>
      one.body === parts.body?.id &&
      one.lens === parts.lens?.id &&
      one.converter === (parts.converter?.id ?? null) &&
      one.focalLength === parts.focalLength &&
      one.distance === distance,
  );
}

/** What fits when the bench is left goes with the sweep. */
function useWritingDown(): void {
  const { session, bench, start } = useSurroundings();
  useEffect(
    () => () => {
      const subject = subjectOf(session, start.draft.peek());
      if (typeof subject === 'string') return;
      const entered = enteredAt(bench);
      const record = writtenDown(session, bench, subject, entered, reckon(entered, subject));
      if (record.readings.length > 0) writeDown(session, bench, subject, record);
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
      <p class="muted small">{words('bench').rig({ ...subject, focalLength: reckoned.focalLength })}</p>
      <DistanceCard reckoned={reckoned} open={open} />
      <DepthCard reckoned={reckoned} />
      <TargetCard subject={subject} reckoned={reckoned} />
      <LightCard />
      <SquareCard reckoned={reckoned} corners={corners} />
      <PlaceCard reckoned={reckoned} />
      <WalkCard reckoned={reckoned} />
      <Cautions all={AT_FIRST} />
    </>
  );
}
