// How far the target stands: the general-purpose distance, the range where the room is short, and what was measured.
import { benchDistance, usualRange } from '../../optics/distance.ts';
import { writeDistance } from '../../optics/length.ts';
import { useSurroundings } from '../useSession.ts';
import { Fact, Says } from './fact.tsx';
import type { Reckoned } from './reckon.ts';
import { Choosing, Typing } from './typing.tsx';
import { typedAt } from './fields.ts';

interface Props {
  readonly reckoned: Reckoned;
  /** The distance of the sweep to come can still be chosen. */
  readonly open: boolean;
}

export function DistanceCard({ reckoned, open }: Props) {
  const { bench, start } = useSurroundings();
  const { faults, unit, distance, focalLength, closest } = reckoned;
  const [shortest, usual] = usualRange(focalLength);
  const stands = benchDistance({ focalLength, closestFocus: closest }, { wish: 'used', distance }, unit);
  const measured = typedAt(bench).distance.trim() !== '' && !faults.distance && !faults.reach;
  return (
    <section class="card" aria-labelledby="bench-distance">
      <h2 id="bench-distance">Distance</h2>
      <dl class="facts">
        <Fact name="General use">{writeDistance(usual, unit)}, 50 focal lengths</Fact>
        <Fact name="Short room">from {writeDistance(shortest, unit)}, 25 focal lengths</Fact>
        <Fact name="Yours">{writeDistance(distance, unit)}</Fact>
      </dl>
      <Choosing field="unit" label="Distances in" options={UNITS} />
      <Typing field="distance" label="Distance as measured" hint="Empty: the distance of the sweep." faults={faults} />
      <Choosing field="from" label="Measured from" options={FROM} />
      {typedAt(bench).from !== 'film plane' && (
        <Typing field="reach" label="Film-plane mark to front of lens, mm" faults={faults} />
      )}
      <Typing field="closest" label="Closest focus of the lens" hint="As the maker gives it, from the film plane; may stay empty." faults={faults} />
      <Says>{stands.ok ? stands.value.say : stands.sentence}</Says>
      {open && measured && (
        <button type="button" onClick={() => start.tell({ distance })}>
          Use {writeDistance(distance, unit)} for the sweep
        </button>
      )}
    </section>
  );
}

const UNITS = [
  { value: 'm', label: 'metres' },
  { value: 'ft', label: 'feet' },
];
const FROM = [
  { value: 'film plane', label: 'the film-plane mark' },
  { value: 'front of lens', label: 'the front of the lens' },
];
