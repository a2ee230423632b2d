// How far the target may stand: the general-purpose distance, the range where the room is short, and how it is measured.
import { benchDistance, usualRange } from '../../optics/distance.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { BenchRoom, isMarked } from './benchRoom.tsx';
import { Facts, Says } from './fact.tsx';
import type { Reckoned } from './reckon.ts';
import { Choosing, Typing } from './typing.tsx';
import { enteredAt } from './fields.ts';

export function DistanceCard({ reckoned }: { readonly reckoned: Reckoned }) {
  const { distance: say, choices } = words('bench');
  const { picks } = enteredAt(useSurroundings().bench);
  const { faults, unit, distance, focalLength } = reckoned;
  const [shortest, usual] = usualRange(focalLength);
  const stands = standsAt(reckoned);
  return (
    <BenchRoom title={say.title} marked={isMarked(faults, ['reach', 'closest'])}>
      <Facts all={say.figures({ usual, shortest, yours: distance, unit })} />
      <Choosing field="unit" from={choices.unit} />
      <Choosing field="from" from={choices.from} />
      {picks.from !== 'film plane' && <Typing field="reach" faults={faults} />}
      <Typing field="closest" faults={faults} />
      {stands.ok && <Says>{say.stands(stands.value, shortest, unit)}</Says>}
    </BenchRoom>
  );
}

/** What the distance in use is good for, or why the lens cannot stand there. */
export const standsAt = ({ focalLength, closest, distance, unit }: Reckoned) =>
  benchDistance({ focalLength, closestFocus: closest }, { wish: 'used', distance }, unit);
