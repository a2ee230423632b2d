// For those who place the depth of field on purpose: what the ramp beside the target reads, and the share of the depth
// that is to lie in front of the subject. The value to enter follows when the sweep is done.
import { shareOfDepth } from '../../optics/depthOfField.ts';
import { writeNumber } from '../../optics/quantity.ts';
import { useSurroundings } from '../useSession.ts';
import { Says } from './fact.tsx';
import { typedAt } from './fields.ts';
import type { Typed } from './untyped.ts';
import { nearTarget } from './lengths.ts';
import { placementReading, rampErrorTyped } from './readings.ts';
import type { Reckoned } from './reckon.ts';
import { Typing } from './typing.tsx';
import { millimetres } from '../../units.ts';

export function PlaceCard({ reckoned }: { readonly reckoned: Reckoned }) {
  const typed = typedAt(useSurroundings().bench);
  return (
    <section class="card" aria-labelledby="bench-place">
      <h2 id="bench-place">Ramp, and depth on purpose</h2>
      <Typing field="rampReading" label="Number beside the ramp’s sharpest line" hint="With its sign; the ramp is printed with the target." />
      {typed.rampReading.trim() !== '' && <Says>{rampInWords(typed, reckoned)}</Says>}
      <details>
        <summary>Finer: a ramp that leans by another angle</summary>
        <div class="stack">
          <Typing field="rampFace" label="Length of the ramp, mm" />
          <Typing field="rampSetBack" label="Its upper end stands back by, mm" hint="Empty: it leans by 45°, as it is drawn for." />
        </div>
      </details>
      <Typing field="share" label="Share of the depth in front, %" hint="Empty: focus lies on the subject." />
      {typed.share.trim() !== '' && <Says>{shareInWords(typed, reckoned)}</Says>}
    </section>
  );
}

function rampInWords(typed: Typed, reckoned: Reckoned): string {
  const error = rampErrorTyped(typed, reckoned);
  if (!error.ok) return error.sentence;
  if (error.value === 0) return 'Focus lies on the target.';
  const where = `Focus lies ${nearTarget(millimetres(Math.abs(error.value)), reckoned.unit)} ${error.value < 0 ? 'in front of' : 'behind'} the target`;
  if (!reckoned.bench?.ok) return `${where}.`;
  const { depth, step } = reckoned.bench.value;
  const share = shareOfDepth(error.value, depth);
  return (
    `${where}, ${writeNumber(share * 100, 0)} % of the depth of field on that side, ` +
    `about ${writeNumber(Math.abs(error.value) / step, 1)} steps: an estimate.`
  );
}

function shareInWords(typed: Typed, { bench }: Reckoned): string {
  const share = placementReading(typed);
  if (!share.ok) return share.sentence;
  if (!bench?.ok) return 'The shift is reckoned as soon as the widest aperture is entered.';
  const { front, total } = bench.value.depth;
  if (total === 'infinite') return 'The depth of field has no far end here, so it has no share in front: open the aperture or move nearer.';
  const now = writeNumber((front / total) * 100, 0);
  return `On the subject ${now} % lie in front. The value found by the sweep will be shifted for it, and the result says so.`;
}
