// For those who place the depth of field on purpose: what the ramp beside the target reads, and the share of the depth
// that is to lie in front of the subject. The value to enter follows when the sweep is done.
import { shareOfDepth } from '../../optics/depthOfField.ts';
import type { StepSize } from '../../photographs/focusError.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { Says } from './fact.tsx';
import { enteredAt, worthBy, type Entered } from './fields.ts';
import { placementReading, rampErrorEntered } from './readings.ts';
import type { Reckoned } from './reckon.ts';
import { Typing } from './typing.tsx';

export function PlaceCard({ reckoned }: { readonly reckoned: Reckoned }) {
  const { title, finer } = words('bench').place;
  const { bench } = useSurroundings();
  const entered = enteredAt(bench);
  return (
    <section class="card" aria-labelledby="bench-place">
      <h2 id="bench-place">{title}</h2>
      <Typing field="rampReading" />
      {entered.rampReading !== null && <Says>{rampInWords(entered, reckoned, worthBy(bench))}</Says>}
      <details>
        <summary>{finer}</summary>
        <div class="stack">
          <Typing field="rampFace" />
          <Typing field="rampSetBack" />
        </div>
      </details>
      <Typing field="share" />
      {entered.share !== null && <Says>{shareInWords(entered, reckoned)}</Says>}
    </section>
  );
}

function rampInWords(entered: Entered, reckoned: Reckoned, by: StepSize['from']): string {
  const { place, fault } = words('bench');
  const error = rampErrorEntered(entered, reckoned);
  if (!error.ok) return fault(error.fault);
  if (error.value === 0) return place.onTarget;
  const known = reckoned.bench?.ok ? reckoned.bench.value : null;
  return place.focus(error.value, reckoned.unit, known && { share: shareOfDepth(error.value, known.depth), steps: Math.abs(error.value) / known.step, by });
}

function shareInWords(entered: Entered, { bench }: Reckoned): string {
  const { place, fault } = words('bench');
  const share = placementReading(entered);
  if (!share.ok) return fault(share.fault);
  if (!bench?.ok) return place.wanted;
  const { front, total } = bench.value.depth;
  return total === 'infinite' ? fault({ is: 'depth without end' }) : place.share(front / total);
}
