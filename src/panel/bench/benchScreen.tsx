// The bench: the rig drawn and worked out for one situation, before its first hold.
import { useEffect } from 'preact/hooks';
import type { Kit } from '../../kit/kit.ts';
import { distanceOf } from '../../kit/told.ts';
import type { BenchFault } from '../../optics/fault.ts';
import { AT_FIRST } from '../../optics/setUp/caution.ts';
import type { Unnamed } from '../../sweep/plan.ts';
import { words } from '../../words/catalogue.ts';
import { Heading } from '../parts/heading.tsx';
import { previewOf } from '../start/preview.ts';
import { useSurroundings } from '../useSession.ts';
import { Cautions } from './cautions.tsx';
import { DepthCard } from './depthCard.tsx';
import { DistanceCard, standsAt } from './distanceCard.tsx';
import { enteredAt } from './fields.ts';
import { cornersOf } from './given.ts';
import { LightCard } from './lightCard.tsx';
import { PlaceCard } from './placeCard.tsx';
import { printHere } from './printHere.ts';
import { reckon, type Reckoned } from './reckon.ts';
import { RigDrawing } from './rigDrawing.tsx';
import { RigFields } from './rigFields.tsx';
import { SquareCard } from './squareCard.tsx';
import { subjectOf } from './subject.ts';
import { TargetCard } from './targetCard.tsx';
import { useBench, type BenchNow } from './useBench.ts';
import { WalkButton } from './walkButton.tsx';
import { WalkCard } from './walkCard.tsx';
import { writeDown, writtenDown } from './writtenDown.ts';

export function BenchScreen() {
  const say = words('bench');
  const { session, way, start } = useSurroundings();
  const standing = useBench();
  const kit = session.kit.value;
  const { parts } = previewOf(start.draft.value, { kit, records: session.records.value, offers: 'last lens' });
  const open = session.sweep.value === null && !isInKit(parts, kit);
  const rig = 'missing' in standing ? null : standing;
  return (
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      {rig && <p class="muted small">{say.rig({ ...rig.subject, focalLength: rig.reckoned.focalLength })}</p>}
      <RigFields rig={rig} open={open ? { known: parts.focalLength } : null} />
      {'missing' in standing ? <output>{say.missing[standing.missing]}</output> : <Rig {...standing} />}
    </>
  );
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

/** The way into the walk, the drawing with its answers, and everything else one press behind. */
function Rig({ subject, reckoned }: Extract<BenchNow, { reckoned: unknown }>) {
  useWritingDown();
  const { session, bench } = useSurroundings();
  const corners = cornersOf(reckoned);
  const printed = printHere(subject, reckoned, enteredAt(bench).picks, session.now.value);
  const misfit = misfitOf(reckoned);
  return (
    <>
      <WalkButton reckoned={reckoned} />
      {misfit && <output class="fault small">{words('bench').fault(misfit)}</output>}
      <RigDrawing reckoned={reckoned} print={printed} />
      <div class="bench-rooms">
        <DistanceCard reckoned={reckoned} />
        <DepthCard reckoned={reckoned} />
        <TargetCard reckoned={reckoned} printed={printed} />
        <LightCard />
        <SquareCard reckoned={reckoned} corners={corners} />
        <PlaceCard reckoned={reckoned} />
        <WalkCard />
      </div>
      <Cautions all={AT_FIRST} />
    </>
  );
}

/** Why no such rig can be built although every field fits; null where it can. */
function misfitOf(reckoned: Reckoned): BenchFault | null {
  const stands = standsAt(reckoned);
  if (!stands.ok) return stands.fault;
  const { bench } = reckoned;
  if (!bench) return null;
  if (!bench.ok) return bench.fault;
  return bench.value.target.ok ? null : bench.value.target.fault;
}
