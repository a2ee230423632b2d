// How far the target stands: the general-purpose distance, the range where the room is short, and what was measured.
import { benchDistance, usualRange } from '../../optics/distance.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { Facts, Says } from './fact.tsx';
import type { Reckoned } from './reckon.ts';
import { Choosing, Typing } from './typing.tsx';
import { enteredAt } from './fields.ts';

interface Props {
  readonly reckoned: Reckoned;
  /** The distance of the sweep to come can still be chosen. */
  readonly open: boolean;
}

export function DistanceCard({ reckoned, open }: Props) {
  const { distance: say, choices, fault } = words('bench');
  const { bench, start } = useSurroundings();
  const entered = enteredAt(bench);
  const { faults, unit, distance, focalLength, closest } = reckoned;
  const [shortest, usual] = usualRange(focalLength);
  const stands = benchDistance({ focalLength, closestFocus: closest }, { wish: 'used', distance }, unit);
  const measured = entered.distance?.read.ok === true && !faults.reach;
  return (
    <section class="card" aria-labelledby="bench-distance">
      <h2 id="bench-distance">{say.title}</h2>
      <Facts all={say.figures({ usual, shortest, yours: distance, unit })} />
      <Choosing field="unit" from={choices.unit} />
      <Typing field="distance" faults={faults} />
      <Choosing field="from" from={choices.from} />
      {entered.picks.from !== 'film plane' && <Typing field="reach" faults={faults} />}
      <Typing field="closest" faults={faults} />
      <Says>{stands.ok ? say.stands(stands.value, shortest, unit) : fault(stands.fault)}</Says>
      {open && measured && (
        <button type="button" onClick={() => start.tell({ distance })}>
          {say.use(distance, unit)}
        </button>
      )}
    </section>
  );
}
